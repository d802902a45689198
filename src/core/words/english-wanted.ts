import type { wantedNames } from "#core/parts/names-wanted.ts";
import { words } from "./fault-words.ts";
import type { FaultWords } from "./language.ts";

const meant = (how: string, ordered: string): FaultWords =>
  words(`@ is meant to be ${how}`, ordered, "nothing to mend: @ is as it was ordered");

/** What was ordered is no fault, and is never called one. */
export const wanted: Readonly<Record<(typeof wantedNames)[number], FaultWords>> = {
  "mono is meant": meant("mono", "it is meant to be mono"),
  "left ear alone is meant": meant("in the left ear alone", "it is meant for the left ear alone"),
  "right ear alone is meant": meant(
    "in the right ear alone",
    "it is meant for the right ear alone",
  ),
};
