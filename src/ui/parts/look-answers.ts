import { type Look, sightOf } from "#core/checks/look.ts";
import type { BuiltRig } from "#core/rig/rig.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import { english } from "#core/words/english.ts";

/** One thing an eye can see at a place, and the answer of the look that says so. */
export interface LookAnswer {
  readonly label: string;
  readonly means: readonly string[];
}

/** What a fault shows, with the end of the lead where it has several. */
export function seenWords(rig: BuiltRig, { part, at, name }: RigFault): string {
  const { seen } = english.faults[name];
  const end = rig.plugged.find((one) => one.part === part && at.startsWith(one.plug));
  if (end === undefined || name === "sides exchanged") return seen;
  const other = at.split(" in ")[1];
  const what = other === undefined ? seen : `in the socket marked ${other}`;
  const beside = rig.plugged.filter((one) => one.part === part && one.into === end.into);
  const plug = beside.length === 1 ? "" : `the ${end.plug} plug `;
  return `${what}, ${plug}at the ${end.into}`;
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
