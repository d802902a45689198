import { costsAlone } from "./estimate.ts";
import type { Small, SmallRepair } from "./small.ts";

/**
 * All sets of hypotheses after certain repairs that cure in part: how likely each set is, and the seconds it takes at least. A set
 * is a number with one bit a hypothesis. Masses are not brought back to one, so seconds are in proportion to them.
 */
export interface Layer {
  /** The repairs in part that have been done, one bit each. */
  readonly done: number;
  readonly mass: Float64Array;
  /** What it costs to stop there. */
  readonly stop: Float64Array;
  /** Known to take at least so many seconds; the true number where `known` is 1. */
  readonly least: Float64Array;
  readonly known: Uint8Array;
}

/** The set of hypotheses that a column of shares passes. */
export function setOf(column: Float64Array, passes: (share: number) => boolean): number {
  let set = 0;
  for (let at = 0; at < column.length; at++) if (passes(column[at] as number)) set |= 1 << at;
  return set;
}

/** Makes the layers of a problem as they are asked for. `partly` are the repairs that cure in part. */
export function layersOf(
  { weights, wrong, repairs }: Small,
  partly: readonly SmallRepair[],
  fallback: number,
): (done: number) => Layer {
  const alone = costsAlone(wrong, repairs, fallback);
  const made = new Map<number, Layer>();
  const make = (done: number): Layer => {
    const left = weights.map((weight, at) =>
      partly.reduce(
        (sum, { cures }, bit) => (done & (1 << bit) ? sum * (1 - (cures[at] as number)) : sum),
        weight,
      ),
    );
    const layer = {
      done,
      mass: sums(left),
      stop: sums(left.map((weight, at) => weight * fallback * (wrong[at] as number))),
      least: sums(left.map((weight, at) => weight * (alone[at] as number))),
      known: new Uint8Array(1 << weights.length),
    };
    made.set(done, layer);
    return layer;
  };
  return (done) => made.get(done) ?? make(done);
}

/** The sum of the members of every set. */
function sums(each: Float64Array): Float64Array {
  const all = new Float64Array(1 << each.length);
  for (let set = 1; set < all.length; set++) {
    const low = 31 - Math.clz32(set & -set);
    all[set] = (all[set & (set - 1)] as number) + (each[low] as number);
  }
  return all;
}
