import { type Look, sightOf } from "#core/checks/look.ts";
import { seenWords } from "#core/report/fault-words.ts";
import type { BuiltRig } from "#core/rig/rig.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import type { Language } from "#core/words/language.ts";

/** One thing an eye can see at a place, and the answer of the look that says so. */
export interface LookAnswer {
  readonly label: string;
  readonly means: readonly string[];
}

/** The closed list of a look, 'all as it should be' first. */
export function lookAnswers(
  language: Language,
  rig: BuiltRig,
  look: Look,
  faults: readonly RigFault[],
): readonly LookAnswer[] {
  const label = (sight: string): string => {
    const fault = faults.find((one) => sightOf(one) === sight);
    return fault === undefined ? language.asItShouldBe : seenWords(language, rig, fault);
  };
  return look.answers.map((answer) => ({ label: label(answer), means: [answer] }));
}
