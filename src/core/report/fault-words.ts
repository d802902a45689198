import { isUnlisted } from "#core/diagnosis/fault-sets.ts";
import type { Model } from "#core/diagnosis/model.ts";
import type { BuiltRig } from "#core/rig/rig.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import { faultText, spotOf } from "#core/words/fault-text.ts";
import type { Language } from "#core/words/language.ts";
import { seatName } from "./names.ts";

/** A fault as a sentence without its full stop; what is not on the list with the stretch that it is in. */
export function faultWords(language: Language, { rig, root }: Model, fault: RigFault): string {
  const text = faultText(language, rig, fault);
  if (!isUnlisted(fault) || rig.positions.length === 1) return text;
  const { inShared, inOwn } = language.report;
  return root.faults.includes(fault) ? inShared(text) : inOwn(text, seatName(rig, fault.place));
}

/** What a fault shows, with the end of the lead where it has several. */
export function seenWords({ faults, report }: Language, rig: BuiltRig, fault: RigFault): string {
  const { seen } = faults[fault.name];
  const { into, plug, socket } = spotOf(rig, fault);
  if (into === undefined) return seen;
  return report.seenAt(socket === undefined ? seen : report.inSocket(socket), into, plug);
}
