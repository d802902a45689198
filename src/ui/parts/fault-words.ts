import { isUnlisted } from "#core/diagnosis/fault-sets.ts";
import type { Model } from "#core/diagnosis/model.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import { english } from "#core/words/english.ts";
import { faultText } from "#core/words/fault-text.ts";
import { seatName } from "./names.ts";

/** A fault as a sentence without its full stop; what is not on the list with the stretch that it is in. */
export function faultWords({ rig, root }: Model, fault: RigFault): string {
  const text = faultText(english, rig, fault);
  if (!isUnlisted(fault) || rig.positions.length === 1) return text;
  const shared = root.faults.includes(fault);
  return `${text}, in what ${shared ? "all share" : `${seatName(rig, fault.place)} alone has`}`;
}
