import type { BuiltRig } from "#core/rig/rig.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import type { Language, Spot } from "./language.ts";

/** Where a fault sits in a rig as drawn. */
export function spotOf(rig: BuiltRig, { part, at }: RigFault): Spot {
  const end = rig.plugged.find((one) => one.part === part && at.split(" in ")[0] === one.plug);
  if (end === undefined) return { part, at };
  const beside = rig.plugged.filter((one) => one.part === part && one.into === end.into);
  const socket = at.split(" in ")[1];
  return {
    part,
    at,
    into: end.into,
    ...(beside.length > 1 ? { plug: end.plug } : {}),
    ...(socket === undefined ? {} : { socket }),
  };
}

/** Where a fault is, with the positions by the names on their tape. */
export function whereText(language: Language, rig: BuiltRig, fault: RigFault): string {
  const text = language.where(spotOf(rig, fault));
  const seat = rig.positions.find(({ id }) => id === text);
  return seat === undefined ? text : seat.name;
}

/** The fault as a sentence without its full stop. */
export const faultText = (language: Language, rig: BuiltRig, fault: RigFault): string =>
  language.faults[fault.name].is(whereText(language, rig, fault)) +
  (fault.comesAndGoes ? language.nowAndThen : "");

/** What to do about it. */
export const mendText = (language: Language, rig: BuiltRig, fault: RigFault): string =>
  language.faults[fault.name].mend(whereText(language, rig, fault));
