import type { PartKind } from "#core/parts/part.ts";
import { earMatrix } from "#core/rig/ear-matrix.ts";
import { type BuiltRig, listenerOf } from "#core/rig/rig.ts";
import { type RigFault, rigFaults } from "#core/rig/rig-faults.ts";
import { midband, solved } from "#core/rig/steps.ts";
import { type Complex, scale, size, subtract } from "#core/units/complex.ts";
import { fromDecibels } from "#core/units/decibels.ts";
import type { Matrix } from "#core/units/matrix.ts";
import type { Hertz } from "#core/units/units.ts";
import { busesOf, chainBlock, partsInto, stretchBlock } from "./chain-deck.ts";
import type { Block } from "./deck.ts";
import { simulate } from "./ngspice.ts";

/** One comparison: what the core says, and the circuit for the simulator to say the same of. */
export interface Case {
  /** The kind of part whose fault it is. */
  readonly of: PartKind | "no fault";
  readonly name: string;
  readonly ours: Matrix;
  readonly block: Block;
  readonly at: Hertz;
  readonly signals: number;
  /** From the voltages of the drivers to what the core speaks of. */
  readonly heard: (drivers: Matrix) => Matrix;
}

export interface Compared extends Case {
  /** The largest of all entries: volts for one volt of the source, and in shares of what is allowed. */
  readonly off: number;
  readonly share: number;
}

const withNone = (faults: readonly RigFault[]) => [[], ...faults.map((fault) => [fault])];
const same = (matrix: Matrix) => matrix;

function named(
  rig: BuiltRig,
  where: string,
  [fault]: readonly RigFault[],
): Pick<Case, "of" | "name"> {
  const kind = rig.parts.find(({ id }) => id === fault?.part)?.kind ?? "no fault";
  return { of: kind, name: `${rig.name}, ${where}: ${fault?.id ?? "no fault"}` };
}

/** The circuit into every part that takes something in, under every fault of what it consists of. */
export function stretchCases(rig: BuiltRig, at: Hertz): Case[] {
  const takers = rig.parts.map(({ id }) => id).filter((id) => rig.part(id).takes.length > 0);
  return takers.flatMap((id) => {
    const near = partsInto(rig, id);
    const signals = busesOf(rig, near.at(-1) ?? "").length;
    return withNone(rigFaults(rig).filter(({ part }) => near.includes(part))).map((faults) => ({
      ...named(rig, `into ${id} at ${at} Hz`, faults),
      ours: solved(rig, id, faults, at),
      block: stretchBlock(rig, id, faults),
      at,
      signals,
      heard: same,
    }));
  });
}

/** The way to every position, under every fault of the rig. */
export const chainCases = (rig: BuiltRig): Case[] =>
  rig.positions.flatMap(({ id, wears }) =>
    withNone(rigFaults(rig)).map((faults) => ({
      ...named(rig, `ears of ${id}`, faults),
      ours: earMatrix(rig, id, faults),
      block: chainBlock(rig, wears, faults),
      at: midband,
      signals: 2,
      heard: worn(faults.find(({ part }) => part === listenerOf(id))?.name ?? ""),
    })),
  );

/** From the drivers to the ears. A poorer ear is 15 dB down: 2.8 % of adults, handbook, section 6. */
const worn =
  (trait: string) =>
  ([left = [], right = []]: Matrix): Matrix => {
    const duller = (row: readonly Complex[]) => row.map((gain) => scale(gain, fromDecibels(-15)));
    if (trait === "worn backwards") return [right, left];
    if (trait === "left ear hears less") return [duller(left), right];
    return [left, trait === "right ear hears less" ? duller(right) : right];
  };

/** A thousandth of an entry, or a hundred-thousandth of the source. */
const allowed = (outside: Complex) => Math.max(0.001 * size(outside), 1e-5);

/** Asks the simulator the same. All cases must have their signals and frequency in common. */
export function compare(cases: readonly Case[]): Compared[] {
  const [first] = cases;
  if (first === undefined) return [];
  const blocks = cases.map(({ block }) => block);
  const answers = simulate(blocks, first.signals, first.at);
  return cases.map((one, index) => {
    const outside = one.heard(answers[index] ?? []).flat();
    const ours = one.ours.flat();
    if (outside.length !== ours.length)
      throw new Error(`${one.name}: ${ours.length} entries against ${outside.length}`);
    const offs = outside.map((entry, at) => size(subtract(entry, ours[at] ?? entry)));
    const shares = outside.map((entry, at) => (offs[at] ?? Number.NaN) / allowed(entry));
    return { ...one, off: Math.max(...offs), share: Math.max(...shares) };
  });
}
