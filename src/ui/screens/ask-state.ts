import type { EarCheck, EarCheckName, Question } from "#core/checks/check.ts";
import type { Answered, Asked, Results } from "#core/checks/finding.ts";
import type { Log } from "#core/session/log.ts";
import { pairOrder } from "#core/signals/burst-pair.ts";

export type AskedByEar = Extract<Asked, { check: EarCheckName }>;

/** Where one ear check stands. `seed` is that of the last playing; answers are in the order they were heard. */
export interface AskState {
  readonly phase: "play" | "question";
  readonly seed: number;
  readonly given: readonly (readonly string[])[];
  /** It is not the same each time: then every question is asked a second time, of the other times. */
  readonly changes: boolean;
  /** The answers of the first time, once it is the other times that are asked about. */
  readonly first?: Results;
}

/** A check that was begun, with the log it was begun with. */
export interface AskSoFar {
  readonly log: Log;
  readonly asked: AskedByEar;
  readonly state: AskState;
}

export const beforePlaying: AskState = { phase: "play", seed: 0, given: [], changes: false };

/** The questions in the order of what was heard: the pair's bursts change places with the seed. */
export const asHeard = <T>(check: EarCheck, seed: number, inOrder: readonly T[]): readonly T[] =>
  check.name === "pair" && pairOrder(seed) === "opposite first" ? [...inOrder].reverse() : inOrder;

/** The question to answer now. */
export const questionNow = (check: EarCheck, { seed, given }: AskState): Question | undefined =>
  asHeard(check, seed, check.questions)[given.length];

/** What was found once every question is answered, results in the core's order; until then the next question. */
export function afterAnswer(
  check: EarCheck,
  asked: AskedByEar,
  state: AskState,
  given: readonly string[],
): AskState | Answered {
  const all = [...state.given, given];
  if (all.length < check.questions.length) return { ...state, given: all };
  const results = asHeard(check, state.seed, all);
  if (state.first !== undefined) return { asked, results: state.first, otherTimes: results };
  return state.changes ? { ...state, given: [], first: results } : { asked, results };
}
