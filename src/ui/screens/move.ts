import { seenWords } from "#core/report/fault-words.ts";
import type { Move } from "#core/rig/moves.ts";
import { type BuiltRig, operatorId, wornAt } from "#core/rig/rig.ts";
import type { Derived } from "#core/session/derive.ts";

/** What is pressed when a move is made. */
export function doneWords(move: Move): string {
  if (move.move !== "replaced") return "Done, check again";
  if (move.place === operatorId) return "Somebody else writes now, check again";
  if (move.place.endsWith(": listener")) return "Somebody else listens now, check again";
  return "Done, check again";
}

/** The place on the way to a position that a hand goes to. */
export function handAt(rig: BuiltRig, position: string, move: Move): string {
  const worn = wornAt(rig, position);
  switch (move.move) {
    case "set right":
    case "replaced":
      return move.place;
    case "exchanged":
      return move.parts.find((part) => part === worn) ?? move.parts[0];
    case "turned round":
      return worn;
    case "moved":
      return (
        rig.plugged.find(({ part, plug }) => part === move.part && plug === move.plug)?.into ?? ""
      );
    default:
      return move.part;
  }
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
