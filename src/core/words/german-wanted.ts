import type { wantedNames } from "#core/parts/names-wanted.ts";
import { words } from "./fault-words.ts";
import type { FaultWords } from "./language.ts";

const meant = (how: string, ordered: string): FaultWords =>
  words(`@ soll ${how} sein`, ordered, "nichts zu reparieren: @ ist so, wie es bestellt wurde");

/** What was ordered is no fault, and is never called one. */
export const wanted: Readonly<Record<(typeof wantedNames)[number], FaultWords>> = {
  "mono is meant": meant("mono", "es soll mono sein"),
  "left ear alone is meant": meant("nur im linken Ohr", "es soll nur ins linke Ohr"),
  "right ear alone is meant": meant("nur im rechten Ohr", "es soll nur ins rechte Ohr"),
};
