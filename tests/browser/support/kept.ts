import type { Finding } from "#core/checks/finding.ts";
import { builtInRigs, straightIn } from "#core/rig/rigs.ts";
import { derive } from "#core/session/derive.ts";
import { add, type Log, type Said } from "#core/session/log.ts";
import { createMemoryShelf } from "#storage/memory-shelf.ts";
import { open, press } from "./open.tsx";

const [rig = straightIn] = builtInRigs;
const position = "position 4";
const found = (check: "left" | "right" | "pair", ...results: string[][]): Said => ({
  entry: "finding",
  finding: { asked: { check, position }, results },
});
const complaint: Finding = {
  asked: { check: "complaint", position },
  results: [["crackle, or it comes and goes"]],
};

const logOf = (...said: readonly Said[]): Log =>
  said.reduce<Log>((log, one) => add(log, one, 0), add([], { entry: "drawing", rig }, 0));

/** Somebody complains of a crackle, and all sounds as it should. */
export const crackle = logOf(
  { entry: "finding", finding: complaint },
  found("left", ["left ear"]),
  found("right", ["right ear"]),
  found("pair", ["middle"], ["all round"]),
);

/** The same where nothing can be done that comes before twisting the plug. */
export function twisting(log: Log = crackle): Log {
  const advice = derive(log)?.standing(position).advice;
  if (advice?.advice !== "do") return log;
  return twisting(add(log, { entry: "cannot", move: advice.move }, 0));
}

/** Goes on with a kept log at the fourth position. */
export async function goOn(log: Log, seed?: number) {
  const shelf = createMemoryShelf();
  shelf.lay("kept", log, seed);
  const opened = open({ shelf });
  await press("Go on with the last session");
  await press(/^4 guest/);
  return opened;
}
