import type { EarCheck, EarCheckName, Question } from "#core/checks/check.ts";
import type { Asked } from "#core/checks/finding.ts";
import { pairOrder } from "#core/signals/burst-pair.ts";

export type AskedByEar = Extract<Asked, { check: EarCheckName }>;

/** Where one ear check stands. `seed` is that of the last playing; answers are in the order they were heard. */
export interface AskState {
  readonly phase: "play" | "question";
  readonly seed: number;
  readonly given: readonly (readonly string[])[];
}

export const beforePlaying: AskState = { phase: "play", seed: 0, given: [] };

/** The questions in the order of what was heard: the pair's bursts change places with the seed. */
export const asHeard = <T>(check: EarCheck, seed: number, inOrder: readonly T[]): readonly T[] =>
  check.name === "pair" && pairOrder(seed) === "opposite first" ? [...inOrder].reverse() : inOrder;

/** The question to answer now. */
export const questionNow = (check: EarCheck, { seed, given }: AskState): Question | undefined =>
  asHeard(check, seed, check.questions)[given.length];

/** The results in the core's order, once every question is answered. */
export const resultsOf = (check: EarCheck, { seed, given }: AskState) =>
  given.length < check.questions.length ? undefined : asHeard(check, seed, given);
