import type { PartKind } from "#core/parts/catalogue.ts";
import { busesOf, circuitInto, solved } from "#core/rig/circuit-step.ts";
import { earMatrix } from "#core/rig/ear-matrix.ts";
import { plugged } from "#core/rig/mating.ts";
import { isFed, reachInto } from "#core/rig/reach.ts";
import { type BuiltRig, clientId, listenerOf } from "#core/rig/rig.ts";
import { type RigFault, rigFaults } from "#core/rig/rig-faults.ts";
import { type Complex, scale, size, subtract } from "#core/units/complex.ts";
import { fromDecibels } from "#core/units/decibels.ts";
import type { Matrix } from "#core/units/matrix.ts";
import type { Hertz, Volts } from "#core/units/units.ts";
import { rigBlock, stretchBlock } from "./chain-deck.ts";
import type { Block } from "./deck.ts";
import { simulate } from "./ngspice.ts";

/** One comparison: what the core says, and the circuit for the simulator to say the same of. */
export interface Case {
  /** The kind of part whose fault it is. */
  readonly of: PartKind | "no fault";
  readonly name: string;
  readonly ours: (at: Hertz) => Matrix;
  readonly block: Block;
  readonly signals: number;
  /** From the voltages that the simulator gives to what the core speaks of. */
  readonly heard: (simulated: Matrix) => Matrix;
}

export interface Compared extends Case {
  readonly entries: number;
  /** The largest of all entries: volts for one volt of the source, and in shares of what is allowed. */
  readonly off: Volts;
  readonly share: number;
}

/** Those with a circuit of their own: a contact that comes and goes has that of one that is open, and what was ordered is in no circuit. */
export const steadyFaults = (rig: BuiltRig): readonly RigFault[] =>
  rigFaults(rig).filter(({ comesAndGoes, part }) => !comesAndGoes && part !== clientId);

const withNone = (faults: readonly RigFault[]) => [[], ...faults.map((fault) => [fault])];
export const same = (matrix: Matrix) => matrix;

/** Whose fault a case is, and what it is called. */
export function named(
  rig: BuiltRig,
  where: string,
  [fault]: readonly RigFault[],
): Pick<Case, "of" | "name"> {
  const kind = rig.parts.find(({ id }) => id === fault?.part)?.kind ?? "no fault";
  return { of: kind, name: `${rig.name}, ${where}: ${fault?.id ?? "no fault"}` };
}

/** One part for each circuit that something takes from: the others on it are in the same one. */
export const takersOf = (rig: BuiltRig): readonly string[] =>
  rig.parts.map(({ id }) => id).filter((id) => rig.part(id).takes.length > 0 && isFed(rig, id));

/** The circuit into every part that takes something in, under every fault that is its own. */
export const stretchCases = (rig: BuiltRig): Case[] =>
  takersOf(rig).flatMap((id) =>
    withNone(steadyFaults(rig).filter(circuitInto(rig, id).owns)).map((faults) => ({
      ...named(rig, `into ${id}`, faults),
      ours: (at) => solved(rig, id, faults, at),
      block: stretchBlock(rig, id, faults),
      signals: busesOf(rig, reachInto(rig, id).from).length,
      heard: same,
    })),
  );

/** The ears of everybody in a rig, two rows for each position, under each of some faults. */
const earCases = (rig: BuiltRig, faults: readonly RigFault[]): Case[] =>
  withNone(faults.filter((fault) => isPossible(rig, fault))).map((set) => ({
    ...named(rig, "all ears", set),
    ours: (at) => rig.positions.flatMap(({ id }) => earMatrix(rig, id, set, at)),
    block: rigBlock(rig, set),
    signals: 2,
    heard: (drivers) =>
      rig.positions.flatMap(({ id }, index) =>
        worn(
          set.find(({ part }) => part === listenerOf(id))?.name ?? "",
          drivers.slice(2 * index, 2 * index + 2),
        ),
      ),
  }));

/** No hand puts a plug where another one is. */
function isPossible(rig: BuiltRig, fault: RigFault): boolean {
  const sockets = plugged(rig.plugged, [fault]).map(({ into, socket }) => `${into}: ${socket}`);
  return new Set(sockets).size === sockets.length;
}

/** Whole rigs: each with nothing wrong, and under every fault that none before it has, of a part that is made the same. */
export function rigCases(rigs: readonly BuiltRig[]): Case[] {
  const had = new Set<string>();
  return rigs.flatMap((rig) => {
    const fresh = steadyFaults(rig).filter(({ part, at, name }) => {
      const made = rig.parts.find(({ id }) => id === part);
      const key = JSON.stringify([made?.kind, made?.settings, at, name]);
      return !had.has(key) && had.add(key);
    });
    return earCases(rig, fresh);
  });
}

/** Whole rigs under every fault. */
export const rowCases = (rigs: readonly BuiltRig[]): Case[] =>
  rigs.flatMap((rig) => earCases(rig, steadyFaults(rig)));

/** From the drivers to the ears. A poorer ear is 15 dB down: 2.8 % of adults, handbook, section 6. */
function worn(trait: string, [left = [], right = []]: Matrix): Matrix {
  const duller = (row: readonly Complex[]) => row.map((gain) => scale(gain, fromDecibels(-15)));
  if (trait === "worn backwards") return [right, left];
  if (trait === "left ear hears less") return [duller(left), right];
  return [left, trait === "right ear hears less" ? duller(right) : right];
}

/** A thousandth of an entry, or a hundred-thousandth of the source. */
const usual = (outside: Complex): Volts => Math.max(0.001 * size(outside), 1e-5);

/** Low, middle and high: capacitance tells at the ends. */
export const frequencies: readonly Hertz[] = [100, 1000, 10_000];

/** Cases of equally many signals go to the simulator together. */
export const compareAll = (
  cases: readonly Case[],
  at: readonly Hertz[],
  allowed?: (outside: Complex) => Volts,
): Compared[] =>
  [...new Set(cases.map(({ signals }) => signals))].flatMap((count) =>
    compare(
      cases.filter(({ signals }) => signals === count),
      at,
      allowed,
    ),
  );

/** Asks the simulator the same at every frequency. All cases must have their signals in common. */
function compare(
  cases: readonly Case[],
  at: readonly Hertz[],
  allowed: (outside: Complex) => Volts = usual,
): Compared[] {
  const [first] = cases;
  if (first === undefined) return [];
  const blocks = cases.map(({ block }) => block);
  const answers = simulate(blocks, first.signals, at);
  return cases.map((one, index) => {
    const found = at.flatMap((frequency, place) => {
      const outside = one.heard(answers[index]?.[place] ?? []).flat();
      const ours = one.ours(frequency).flat();
      if (outside.length !== ours.length)
        throw new Error(`${one.name}: ${ours.length} entries against ${outside.length}`);
      return outside.map((entry, which) => {
        const off = size(subtract(entry, ours[which] ?? entry));
        return { off, share: off / allowed(entry) };
      });
    });
    return {
      ...one,
      entries: found.length,
      off: Math.max(...found.map(({ off }) => off)),
      share: Math.max(...found.map(({ share }) => share)),
    };
  });
}
