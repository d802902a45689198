import { type Belief, summed, type Way } from "./belief.ts";
import { guesser } from "./estimate.ts";
import type { Choice } from "./problem.ts";
import type { Small } from "./small.ts";
import { curing, waysOf } from "./ways.ts";

/** More repairs than this are not weighed: those that cure most a second are. */
const mostRepairs = 24;
/** The search ends when what is unknown is this share of the whole. */
const settled = 0.002;

/**
 * First steps and the expected seconds with each, the best first, where answers err. A search that grows the best plan so far where
 * most is unknown, until it has met `limit` beliefs; what it has not gone into it guesses.
 */
export function lookingAhead(small: Small, fallback: number, limit: number): readonly Choice[] {
  const guess = guesser(small.wrong, fallback);
  const ways = waysOf(small.wrong, fallback, guess);
  const { weights, tests } = small;
  const repairs = curing(small.repairs, weights, mostRepairs);
  const root: Belief = { weights, tests, repairs, guess: guess(weights, repairs, 0), ways: [] };
  let met = 0;
  do met += grow(root, ways);
  while (met < limit && root.guess.doubt > settled * root.guess.seconds);
  return root.ways.map(({ next, guess: { seconds } }) => ({ next, seconds }));
}

/** Goes into one more belief of the best plan so far, and thinks anew of all above it. Returns how many beliefs it met. */
function grow(belief: Belief, waysFrom: (belief: Belief) => Way[]): number {
  const [best] = belief.ways;
  let met = 1;
  if (best === undefined) {
    belief.ways = waysFrom(belief);
    met += belief.ways.reduce((sum, { after }) => sum + after.length, 0);
  } else {
    met = grow(
      best.after.reduce((a, b) => (b.guess.doubt > a.guess.doubt ? b : a)),
      waysFrom,
    );
    best.guess = summed(best.own, best.after);
  }
  belief.ways.sort((a, b) => a.guess.seconds - b.guess.seconds);
  belief.guess = belief.ways[0]?.guess ?? belief.guess;
  return met;
}
