import { type Look, sightOf } from "#core/checks/look.ts";
import type { BuiltRig } from "#core/rig/rig.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import { english } from "#core/words/english.ts";
import { spotOf } from "#core/words/fault-text.ts";

/** One thing an eye can see at a place, and the answer of the look that says so. */
export interface LookAnswer {
  readonly label: string;
  readonly means: readonly string[];
}

/** What a fault shows, with the end of the lead where it has several. */
export function seenWords(rig: BuiltRig, fault: RigFault): string {
  const { seen } = english.faults[fault.name];
  const { into, plug, socket } = spotOf(rig, fault);
  if (into === undefined) return seen;
  const what = socket === undefined ? seen : `in the socket marked ${socket}`;
  return plug === undefined
    ? `${what}, at the ${into}`
    : `${what}, the ${plug} plug at the ${into}`;
}

/** The closed list of a look, 'all as it should be' first. */
export function lookAnswers(
  rig: BuiltRig,
  look: Look,
  faults: readonly RigFault[],
): readonly LookAnswer[] {
  const label = (sight: string): string => {
    const fault = faults.find((one) => sightOf(one) === sight);
    return fault === undefined ? english.asItShouldBe : seenWords(rig, fault);
  };
  return look.answers.map((answer) => ({ label: label(answer), means: [answer] }));
}
