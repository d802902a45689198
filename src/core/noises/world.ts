import { answersTo, type NoiseAnswer, type Trial } from "#core/checks/noise.ts";
import type { Feed } from "#core/level/stages.ts";
import type { Cause } from "./cause.ts";

/** One way it may be: a cause, how likely it is against the others before anything is tried, and what would be noticed of each trial. */
export interface World {
  readonly cause: Cause;
  readonly weight: number;
  /** The gear as it is in it, where it was drawn. */
  readonly gear?: Feed;
  /** One chance for each of the answers to a trial, as they are meant; they sum to one. */
  readonly meant: (trial: Trial) => Float64Array;
}

/** Chances of answers, of which those left out have none. */
export type Shares = Partial<Readonly<Record<NoiseAnswer, number>>>;

/** What is said of something that surely goes away, grows less, or stays; and of what moves with a hand. Common practice, no source. */
export const gone: Shares = { gone: 0.9, less: 0.08, "the same": 0.015, more: 0.005 };
export const less: Shares = { gone: 0.15, less: 0.7, "the same": 0.13, more: 0.02 };
export const same: Shares = { gone: 0.01, less: 0.05, "the same": 0.91, more: 0.03 };
export const moves: Shares = { "it goes with it": 0.92, "the same": 0.08 };
export const still: Shares = { "it goes with it": 0.04, "the same": 0.96 };
export const thereToo: Shares = { "there too": 0.95, "not there": 0.05 };
export const notThere: Shares = { "there too": 0.04, "not there": 0.96 };

/** Something between two: so much of the first. */
export const mixed = (share: number, one: Shares, other: Shares): Shares => {
  const all = [...Object.keys(one), ...Object.keys(other)] as readonly NoiseAnswer[];
  return Object.fromEntries(
    all.map((answer) => [answer, share * (one[answer] ?? 0) + (1 - share) * (other[answer] ?? 0)]),
  );
};

/** In the order of the answers to a trial; throws where they do not sum to one, which is a mistake of ours. */
export function inOrder(trial: Trial, shares: Shares): Float64Array {
  const chances = Float64Array.from(answersTo(trial.try), (answer) => shares[answer] ?? 0);
  const sum = chances.reduce((all, one) => all + one, 0);
  if (Math.abs(sum - 1) > 1e-6) throw new Error(`${trial.try}: chances sum to ${sum}`);
  return chances;
}
