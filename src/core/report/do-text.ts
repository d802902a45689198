import type { Model } from "#core/diagnosis/model.ts";
import type { Move } from "#core/rig/moves.ts";
import { operatorId } from "#core/rig/rig.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import { english } from "#core/words/english.ts";
import { mendText } from "#core/words/fault-text.ts";
import { moveText, placeText } from "#core/words/move-text.ts";

/** A move as an instruction without its full stop. `back`: headphones that were turned round are turned back by it. */
export function doText({ drawn, branches, rig }: Model, move: Move, back = false): string {
  if (back) return "Turn them back: each cup on its own ear";
  if (move.move === "replaced" && move.place.endsWith(": listener"))
    return `Let somebody else listen at ${placeText(english, drawn, move.place)}`;
  const fault = branches.flatMap(({ faults }) => faults).find((one) => asksPerson(one, move));
  return fault === undefined ? moveText(english, drawn, move) : mendText(english, rig, fault);
}

/** How to mend what a verdict names: in the fault's own words where the move is about its place, else in those of the move. */
export function mendWords(model: Model, move: Move | undefined, fault: RigFault): string {
  if (move === undefined)
    return `${mendText(english, model.rig, fault)}; nothing of that is possible here: somebody else has to see to it`;
  const own =
    "place" in move && move.place === fault.place && (move.move === "set right") === fault.seen;
  return own ? mendText(english, model.rig, fault) : doText(model, move);
}

/** Whether a move is about a person who may have this fault: nobody is replaced or set right as gear is. */
function asksPerson({ place, seen }: RigFault, move: Move): boolean {
  if (move.move !== "replaced" && move.move !== "set right") return false;
  return isPerson(place) && place === move.place && seen === (move.move === "set right");
}

const isPerson = (place: string): boolean => place === operatorId || place.endsWith(": listener");
