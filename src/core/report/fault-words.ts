import { isUnlisted } from "#core/diagnosis/fault-sets.ts";
import type { Model } from "#core/diagnosis/model.ts";
import type { BuiltRig } from "#core/rig/rig.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import { english } from "#core/words/english.ts";
import { faultText, spotOf } from "#core/words/fault-text.ts";
import { seatName } from "./names.ts";

/** A fault as a sentence without its full stop; what is not on the list with the stretch that it is in. */
export function faultWords({ rig, root }: Model, fault: RigFault): string {
  const text = faultText(english, rig, fault);
  if (!isUnlisted(fault) || rig.positions.length === 1) return text;
  const shared = root.faults.includes(fault);
  return `${text}, in what ${shared ? "all share" : `${seatName(rig, fault.place)} alone has`}`;
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
