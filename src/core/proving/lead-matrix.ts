import { gainsAt } from "#core/measurement/gains-at.ts";
import type { Entry, Gain, ReturnMeasurement } from "#core/measurement/return.ts";
import type { PartKind } from "#core/parts/catalogue.ts";
import { relativeGains } from "#core/rig/ear-matrix.ts";
import type { Gains } from "#core/rig/effect.ts";
import { midband } from "#core/rig/midband.ts";
import { build } from "#core/rig/rig.ts";
import { type Complex, multiply, scale, size, zero } from "#core/units/complex.ts";
import type { Decibels, DecibelsFullScale } from "#core/units/units.ts";
import type { Method } from "./choice.ts";
import { leadRig, provedAt } from "./lead-rig.ts";

/** A measurement, and the level at which the signal went out; a recording made elsewhere does not know it. */
export interface Taken {
  readonly measured: ReturnMeasurement;
  readonly level: DecibelsFullScale | undefined;
}

/** What a healthy lead brings where: most bring left to the left and right to the right. */
const straight: Gains = [1, 0, 0, 1];

/** So much of a gain is there, and so much is not. */
const [there, gone] = [0.5, 0.1];
/** What a healthy lead brings stands so far above what comes over. */
const clear: Decibels = 20;

/** What a healthy lead of a kind brings where, proved in some way; against the largest. */
export const meantOf = (kind: PartKind, by: Method): Gains =>
  relativeGains(build(leadRig({ kind, by })), provedAt, []);

/** Whether a kind brings each input clearly something or clearly nothing, so that one can be measured against another. */
export const isComparable = (kind: PartKind, by: Method): boolean =>
  meantOf(kind, by).every((gain) => Math.abs(gain) > there || Math.abs(gain) < gone);

const rowsOf = ([ll, lr, rl, rr]: Gains) => [
  [ll, lr],
  [rl, rr],
];
const most = (row: readonly number[]): number => Math.max(...row.map(Math.abs));

/** What is wrong with a lead that is to count as healthy. */
const unhealthy = [
  "only one input was heard",
  "a side is missing",
  "a side comes over on the other",
  "one side is upside down",
] as const;
export type NotHealthy = (typeof unhealthy)[number];

/** Why a lead does not count as healthy; undefined where it does. */
export function notHealthy(
  { measured: { entries } }: Taken,
  meant: Gains = straight,
): NotHealthy | undefined {
  if (entries.length < 2) return "only one input was heard";
  const rows = rowsOf(meant).map((row, input) => ({ row, heard: entries[input] ?? [] }));
  const used = rows.filter(({ row }) => most(row) > there);
  const wanted = used.flatMap(({ row, heard }) =>
    row.flatMap((gain, at) => (Math.abs(gain) > there ? [{ gain, entry: heard[at] }] : [])),
  );
  if (wanted.some(({ entry }) => !entry?.carried)) return "a side is missing";
  if (used.some(({ row, heard }) => comesOver(row, heard))) return "a side comes over on the other";
  const ways = new Set(wanted.map(({ gain, entry }) => Math.sign(gain) * (entry?.polarity ?? 0)));
  return ways.size === 1 ? undefined : "one side is upside down";
}

/** Whether an input has of a programme that it should have nothing of. */
function comesOver(row: readonly number[], heard: readonly Entry[]): boolean {
  const own = Math.max(...heard.map(({ level }) => level));
  return heard.some(({ level }, at) => Math.abs(row[at] ?? 0) < gone && level > own - clear);
}

type Square = readonly [Complex, Complex, Complex, Complex];
interface AtMidband {
  /** Left input from left, from right, right input from left, from right. */
  readonly gains: Square;
  readonly error: number;
}

/** The four gains at 1 kHz, as if the signal had gone out at its own level; an input that is not there gets nothing. */
function atMidband({ measured, level }: Taken): AtMidband {
  const gains = gainsAt(measured, midband);
  const at = (input: number, programme: number): Gain =>
    gains[input]?.[programme] ?? { ...zero, error: 0 };
  const all = [at(0, 0), at(0, 1), at(1, 0), at(1, 1)] as const;
  const loud = 10 ** (-(level ?? 0) / 20);
  const [ll, lr, rl, rr] = all;
  return {
    gains: [scale(ll, loud), scale(lr, loud), scale(rl, loud), scale(rr, loud)],
    error: loud * Math.max(...all.map(({ error }) => error)),
  };
}

const over = (a: Complex, b: Complex): Complex =>
  scale(multiply(a, { re: b.re, im: -b.im }), 1 / (b.re ** 2 + b.im ** 2));

/** How an input is set, by the strongest that a healthy lead brings it; nothing where it brings nothing. */
function settingOf(healthy: readonly Complex[], meant: readonly number[]): Complex | undefined {
  const at = meant.findIndex((gain) => Math.abs(gain) === most(meant));
  const [own = zero, gain = 0] = [healthy[at], meant[at]];
  return Math.abs(gain) < there || size(own) === 0 ? undefined : scale(own, 1 / gain);
}

/** What a lead does as if both inputs were set alike, and to the drawing: each by what the healthy one brought it. Outputs are taken to be alike. */
function against([ll, lr, rl, rr]: Square, [p, q, r, s]: Square, meant: Gains): Square {
  const [first, second] = rowsOf(meant);
  const one = settingOf([p, q], first ?? []);
  const other = settingOf([r, s], second ?? []);
  const of = (gain: Complex, by: Complex | undefined) => (by ? over(gain, by) : zero);
  return [of(ll, one), of(lr, one), of(rl, other), of(rr, other)];
}

type Part = readonly [re: number, im: number];

/** The matrix of what was looped at 1 kHz: left input from left, from right, right input from left, from right. */
export interface MatrixTold {
  readonly gains: readonly [ll: Part, lr: Part, rl: Part, rr: Part];
  /** One standard deviation of each part. */
  readonly error: number;
  /** No healthy lead was measured first: all gains may be too large or too small by one factor. */
  readonly level?: "as it comes";
}

/**
 * The matrix at 1 kHz as a finding has it: against a healthy lead of its kind, where one was measured, else against the largest gain there is, so that a
 * loss of both sides does not show. Undefined where only one input was heard: what would come by the other is not known.
 */
export function matrixOf(
  taken: Taken,
  healthy: Taken | undefined,
  meant: Gains = straight,
): MatrixTold | undefined {
  if (taken.measured.entries.length < 2) return undefined;
  const own = atMidband(taken);
  const known = healthy && atMidband(healthy);
  const largest = Math.max(...(known ?? own).gains.map(size));
  const gains = known ? against(own.gains, known.gains, meant) : own.gains;
  const by = known ? 1 : largest;
  const pair = ({ re, im }: Complex): Part => [re / by, im / by];
  const [ll, lr, rl, rr] = gains;
  return {
    gains: [pair(ll), pair(lr), pair(rl), pair(rr)],
    error: Math.hypot(own.error, known?.error ?? 0) / largest,
    ...(known ? {} : { level: "as it comes" }),
  };
}
