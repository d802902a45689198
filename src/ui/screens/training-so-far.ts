import type { Answered } from "#core/training/score.ts";

/** An ear-training round so far: its seed, what was answered, and the answer to the question in hand once it is given. */
export interface RoundSoFar {
  readonly seed: number;
  readonly answered: readonly Answered[];
  readonly given?: string | undefined;
}
