import type { BuiltRig } from "#core/rig/rig.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import { plugged } from "#core/rig/stretch.ts";
import type { Language } from "./language.ts";

/** Where a fault is, with the positions by the names on their tape. */
export function whereText(language: Language, rig: BuiltRig, { part, at }: RigFault): string {
  const into = plugged(rig, []).find((end) => end.part === part && at.startsWith(end.plug))?.into;
  const text = language.where(part, at, into);
  const seat = rig.positions.find(({ id }) => id === text);
  return seat === undefined ? text : seat.name;
}

/** The fault as a sentence without its full stop. */
export const faultText = (language: Language, rig: BuiltRig, fault: RigFault): string =>
  language.faults[fault.name].is(whereText(language, rig, fault));

/** What to do about it. */
export const mendText = (language: Language, rig: BuiltRig, fault: RigFault): string =>
  language.faults[fault.name].mend(whereText(language, rig, fault));
