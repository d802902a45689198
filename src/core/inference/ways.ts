import { type Belief, summed, type Way } from "./belief.ts";
import { dot, type Guess, type Guesser, rateOf, times } from "./estimate.ts";
import { massOf } from "./repair-order.ts";
import type { SmallRepair, SmallTest } from "./small.ts";

/** So many tests and repairs of each belief are gone into, those that tell or cure most a second. */
const mostTests = 6;
const mostRepairs = 4;
/** Answers less likely than this are taken together. */
const rare = 0.02;
/** Bits a second of the best test, to those that will be had on the way: found by comparing with exact search. */
const kept = 0.8;
/** Less than this is nothing: of bits a second, and of what remains after a repair. */
const nothing = 1e-9;

/** Opens up a belief: its first steps, each with what is thought of where it leads. A test that cannot be the best is left out. */
export function waysOf(
  wrong: Float64Array,
  fallback: number,
  guess: Guesser,
): (belief: Belief) => Way[] {
  return (belief) => {
    const { weights, tests, repairs } = belief;
    const mass = massOf(weights);
    const rated = telling(tests, weights);
    const rate = kept * (rated[0]?.rate ?? 0);
    const open = rated.map(({ test }) => test);
    const after = (
      left: Float64Array,
      ask: readonly SmallTest[],
      mend: readonly SmallRepair[],
    ) => ({
      weights: left,
      tests: ask,
      repairs: mend,
      guess: guess(left, mend, ask.length > 0 ? rate : 0),
      ways: [],
    });
    const found = [way({ step: "done" }, fallback * dot(weights, wrong), [])];
    for (const repair of curing(repairs, weights, mostRepairs)) {
      const left = uncured(weights, repair);
      const some = massOf(left) > nothing * mass;
      const beliefs = some ? [after(left, open, without(repairs, repair))] : [];
      found.push(way({ step: "repair", at: repair.at }, repair.seconds * mass, beliefs));
    }
    const room = Math.min(...found.map((one) => one.guess.seconds)) - least(belief.guess);
    for (const test of open.filter(({ seconds }) => seconds * mass < room).slice(0, mostTests)) {
      const rest = open.filter((other) => other !== test);
      const beliefs = answered(weights, test, mass).map((left) => after(left, rest, repairs));
      found.push(way({ step: "test", at: test.at }, test.seconds * mass, beliefs));
    }
    return found;
  };
}

/** What a belief costs when all is known: no test makes it less. */
const least = ({ seconds, doubt }: Guess): number => seconds - doubt;

const way = (next: Way["next"], own: number, after: readonly Belief[]): Way => ({
  next,
  own,
  after,
  guess: summed(own, after),
});

/** Tests that tell something, those first that tell most a second. */
const telling = (tests: readonly SmallTest[], weights: Float64Array) =>
  tests
    .map((test) => ({ test, rate: rateOf(test, weights) }))
    .filter(({ rate }) => rate > nothing)
    .sort((a, b) => b.rate - a.rate);

/** The so many repairs that cure most a second, those first. */
export const curing = (
  repairs: readonly SmallRepair[],
  weights: Float64Array,
  most: number,
): readonly SmallRepair[] =>
  repairs
    .map((repair) => ({ repair, rate: dot(repair.cures, weights) / repair.seconds }))
    .filter(({ rate }) => rate > 0)
    .sort((a, b) => b.rate - a.rate)
    .slice(0, most)
    .map(({ repair }) => repair);

/** What a repair leaves, in proportion. */
function uncured(weights: Float64Array, { cures }: SmallRepair): Float64Array {
  const left = new Float64Array(weights.length);
  for (let at = 0; at < left.length; at++)
    left[at] = (weights[at] as number) * (1 - (cures[at] as number));
  return left;
}

/** A repair that cures in part is done once; the list stays the same one where it need not change. */
const without = (repairs: readonly SmallRepair[], done: SmallRepair): readonly SmallRepair[] =>
  done.cures.some((share) => share > 0 && share < 1)
    ? repairs.filter((other) => other !== done)
    : repairs;

/** The beliefs after each answer; rare answers are taken as one. */
function answered(
  weights: Float64Array,
  { columns }: SmallTest,
  mass: number,
): readonly Float64Array[] {
  const beliefs: Float64Array[] = [];
  const seldom = new Float64Array(weights.length);
  for (const column of columns) {
    const one = times(weights, column);
    if (massOf(one) > rare * mass) beliefs.push(one);
    else for (let at = 0; at < one.length; at++) seldom[at] = (seldom[at] ?? 0) + (one[at] ?? 0);
  }
  return massOf(seldom) > 0 ? [...beliefs, seldom] : beliefs;
}
