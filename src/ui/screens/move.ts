import { seenWords } from "#core/report/fault-words.ts";
import type { Move } from "#core/rig/moves.ts";
import { operatorId } from "#core/rig/rig.ts";
import type { Derived } from "#core/session/derive.ts";

/** What is pressed when a move is made. */
export function doneWords(move: Move): string {
  if (move.move !== "replaced") return "Done, check again";
  if (move.place === operatorId) return "Somebody else writes now, check again";
  if (move.place.endsWith(": listener")) return "Somebody else listens now, check again";
  return "Done, check again";
}

/** How many things to look for are named. */
const mostNamed = 3;

/** What is likeliest to be seen where things are to be set right, the likeliest first. */
export function lookFor({ model, standing }: Derived, position: string, move: Move): string[] {
  if (move.move !== "set right") return [];
  const seen = standing(position)
    .suspects.flatMap(({ group }) => group.faults)
    .filter((fault) => fault.seen && fault.place === move.place)
    .map((fault) => seenWords(model.rig, fault));
  return [...new Set(seen)].slice(0, mostNamed);
}
