import type { Model } from "#core/diagnosis/model.ts";
import type { Move } from "#core/rig/moves.ts";
import { operatorId } from "#core/rig/rig.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import { mendText } from "#core/words/fault-text.ts";
import type { Language } from "#core/words/language.ts";
import { moveText, placeText } from "#core/words/move-text.ts";

/** A move as an instruction without its full stop. `back`: headphones that were turned round are turned back by it. */
export function doText(
  language: Language,
  { drawn, branches, rig }: Model,
  move: Move,
  back = false,
): string {
  if (back) return language.report.turnBack;
  if (move.move === "replaced" && move.place.endsWith(": listener"))
    return language.report.otherListener(placeText(language, drawn, move.place));
  const fault = branches.flatMap(({ faults }) => faults).find((one) => asksPerson(one, move));
  return fault === undefined ? moveText(language, drawn, move) : mendText(language, rig, fault);
}

/** How to mend what a verdict names: in the fault's own words where the move is about its place, else in those of the move. */
export function mendWords(
  language: Language,
  model: Model,
  move: Move | undefined,
  fault: RigFault,
): string {
  if (move === undefined) return language.report.notHere(mendText(language, model.rig, fault));
  const own =
    "place" in move && move.place === fault.place && (move.move === "set right") === fault.seen;
  return own ? mendText(language, model.rig, fault) : doText(language, model, move);
}

/** Whether a move is about a person who may have this fault: nobody is replaced or set right as gear is. */
function asksPerson({ place, seen }: RigFault, move: Move): boolean {
  if (move.move !== "replaced" && move.move !== "set right") return false;
  return isPerson(place) && place === move.place && seen === (move.move === "set right");
}

const isPerson = (place: string): boolean => place === operatorId || place.endsWith(": listener");
