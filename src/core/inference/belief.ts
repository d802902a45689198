import type { Guess } from "./estimate.ts";
import type { Step } from "./problem.ts";
import type { SmallRepair, SmallTest } from "./small.ts";

/** A belief that the search has come to, with what may still be asked and done. Its weights sum to the chance of coming there. */
export interface Belief {
  readonly weights: Float64Array;
  readonly tests: readonly SmallTest[];
  readonly repairs: readonly SmallRepair[];
  /** What is thought now, in proportion to the weights. */
  guess: Guess;
  /** Its first steps once it has been gone into, the best first. */
  ways: Way[];
}

/** A first step from a belief, and the beliefs it leads to. */
export interface Way {
  readonly next: Step;
  /** Seconds of the step itself, in proportion to the weights. */
  readonly own: number;
  readonly after: readonly Belief[];
  guess: Guess;
}

/** What is thought of a way, from what is thought of where it leads. */
export function summed(own: number, after: readonly Belief[]): Guess {
  let [seconds, doubt] = [own, 0];
  for (const { guess } of after) {
    seconds += guess.seconds;
    doubt += guess.doubt;
  }
  return { seconds, doubt };
}
