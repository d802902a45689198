import { type Complex, multiply, scale, size, subtract, zero } from "#core/units/complex.ts";
import type { Decibels, DecibelsFullScale, Hertz } from "#core/units/units.ts";
import { gainsAt } from "./gains-at.ts";
import type { Gain, ReturnMeasurement } from "./return.ts";

/** A measurement, and the level at which the signal went out; a recording made elsewhere does not know it. */
export interface Taken {
  readonly measured: ReturnMeasurement;
  readonly level: DecibelsFullScale | undefined;
}

/** Where a finding's matrix holds: the middle of the idents. */
const midband: Hertz = 1000;
/** A side that is healthy stands so far above what comes over from the other. */
const clear: Decibels = 20;

/** What is wrong with a lead that is to count as healthy, as a part of a sentence; undefined where nothing is. */
export function notHealthy({ measured: { entries } }: Taken): string | undefined {
  const [first, second] = entries;
  if (first === undefined || second === undefined) return "only one input was heard";
  const own = [first[0], second[1]];
  if (own.some((one) => !one?.carried)) return "a side is missing";
  const over = [first[1], second[0]];
  if (over.some((one, at) => (one?.level ?? 0) > (own[at]?.level ?? 0) - clear))
    return "a side comes over on the other";
  return own[0]?.polarity === own[1]?.polarity ? undefined : "one side is upside down";
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

/**
 * What a lead does beyond what a healthy one does: the inverse of the healthy one's matrix times its own. How the two inputs are set falls out so;
 * outputs are taken to be alike.
 */
function beyond([a, b, c, d]: Square, [p, q, r, s]: Square): Square {
  const determinant = subtract(multiply(p, s), multiply(q, r));
  const of = (x: Complex, u: Complex, y: Complex, v: Complex) =>
    over(subtract(multiply(x, u), multiply(y, v)), determinant);
  return [of(s, a, q, c), of(s, b, q, d), of(p, c, r, a), of(p, d, r, b)];
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
 * The matrix at 1 kHz as a finding has it: against a healthy lead, where one was measured, else against the largest gain there is, so that a loss
 * of both sides does not show. Undefined where only one input was heard: what would come by the other is not known.
 */
export function matrixOf(taken: Taken, healthy: Taken | undefined): MatrixTold | undefined {
  if (taken.measured.entries.length < 2) return undefined;
  const own = atMidband(taken);
  const known = healthy && atMidband(healthy);
  const most = Math.max(...(known ?? own).gains.map(size));
  const gains = known ? beyond(own.gains, known.gains) : own.gains;
  const by = known ? 1 : most;
  const pair = ({ re, im }: Complex): Part => [re / by, im / by];
  const [ll, lr, rl, rr] = gains;
  return {
    gains: [pair(ll), pair(lr), pair(rl), pair(rr)],
    error: Math.hypot(own.error, known?.error ?? 0) / most,
    ...(known ? {} : { level: "as it comes" }),
  };
}
