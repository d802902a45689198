import { entropy } from "./information.ts";
import { massOf, type RepairCost, repairsAtBest } from "./repair-order.ts";
import type { SmallRepair, SmallTest } from "./small.ts";

/** What a belief is thought to cost before it is gone into. Weights need not sum to one: seconds are in proportion. */
export interface Guess {
  readonly seconds: number;
  /** How much less it might be. */
  readonly doubt: number;
}

/** A share of the seconds that a guess may be out by. */
const careless = 0.002;

/** Guesses the seconds from a belief to a rig that works, given what may still be mended and how many bits a second tests tell. */
export type Guesser = (
  weights: Float64Array,
  repairs: readonly SmallRepair[],
  rate: number,
) => Guess;

/** What is remembered of a list of repairs. */
interface Known {
  /** What each hypothesis costs once it is known. */
  readonly alone: Float64Array;
  /** What would be done first then: hypotheses with the same number need not be told apart. */
  readonly kind: Int32Array;
  readonly inOrder: RepairCost;
}

/**
 * The lower of two: repairs in order and no more questions; or what each hypothesis costs once it is known, and before it as many
 * seconds as the tests take to tell which cure it is. The second is a guess, not a bound: slips make it too low, repairs that tell
 * too high.
 */
export function guesser(wrong: Float64Array, fallback: number): Guesser {
  const lists = new Map<readonly SmallRepair[], Known>();
  return (weights, repairs, rate) => {
    const known = lists.get(repairs) ?? knownOf(wrong, repairs, fallback);
    lists.set(repairs, known);
    const least = dot(weights, known.alone);
    const mended = Math.min(fallback * dot(weights, wrong), known.inOrder(weights));
    const told = rate > 0 ? least + toTell(weights, known.kind, repairs.length + 2) / rate : mended;
    const seconds = Math.min(mended, told);
    return { seconds, doubt: Math.max(0, seconds - least) };
  };
}

function knownOf(wrong: Float64Array, repairs: readonly SmallRepair[], fallback: number): Known {
  const kind = Int32Array.from(wrong, (one, at) => {
    if (one === 0) return repairs.length + 1;
    let [best, most] = [0, 1 / fallback];
    for (const [place, { seconds, cures }] of repairs.entries()) {
      const rate = (cures[at] as number) / seconds;
      if (rate > most) [best, most] = [place + 1, rate];
    }
    return best;
  });
  return {
    alone: costsAlone(wrong, repairs, fallback),
    kind,
    inOrder: repairsAtBest(repairs, wrong.length, fallback, careless),
  };
}

/** The fewest seconds in which each thing wrong can be put right once it is known. */
export function costsAlone(
  wrong: Float64Array,
  repairs: readonly SmallRepair[],
  fallback: number,
): Float64Array {
  const costOf = repairsAtBest(repairs, wrong.length, fallback);
  return wrong.map((one, at) => {
    const alone = new Float64Array(wrong.length);
    alone[at] = one;
    return costOf(alone);
  });
}

/** The bits that tell the kind, in proportion to the weights. */
function toTell(weights: Float64Array, kind: Int32Array, kinds: number): number {
  const mass = massOf(weights);
  const shares = new Float64Array(kinds);
  for (let at = 0; at < weights.length; at++) {
    const one = kind[at] as number;
    shares[one] = (shares[one] as number) + (weights[at] as number) / mass;
  }
  return mass * entropy(shares);
}

/** The sum of products. */
export function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let at = 0; at < a.length; at++) sum += (a[at] as number) * (b[at] as number);
  return sum;
}

/** Product by product. */
export function times(a: Float64Array, b: Float64Array): Float64Array {
  const products = new Float64Array(a.length);
  for (let at = 0; at < a.length; at++) products[at] = (a[at] as number) * (b[at] as number);
  return products;
}

/** Bits that a test tells a second. */
export function rateOf({ seconds, columns }: SmallTest, weights: Float64Array): number {
  const mass = massOf(weights);
  let bits = 0;
  for (const column of columns) {
    const chance = dot(weights, column) / mass;
    if (chance > 0) bits += toldBy(column, weights, chance);
  }
  return bits / mass / seconds;
}

/** What one answer adds to the bits, in proportion to the weights. */
function toldBy(column: Float64Array, weights: Float64Array, chance: number): number {
  let bits = 0;
  for (let at = 0; at < column.length; at++) {
    const p = column[at] as number;
    if (p > 0) bits += (weights[at] as number) * p * Math.log2(p / chance);
  }
  return bits;
}
