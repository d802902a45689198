import { seenWords } from "#core/report/fault-words.ts";
import type { Move } from "#core/rig/moves.ts";
import { operatorId } from "#core/rig/rig.ts";
import type { Derived } from "#core/session/derive.ts";
import type { Language } from "#core/words/language.ts";
import type { Words } from "#ui/words/use-words.ts";

/** What is pressed when a move is made. */
export function doneWords(words: Words["doing"], move: Move): string {
  if (move.move !== "replaced") return words.done;
  if (move.place === operatorId) return words.otherOperator;
  return move.place.endsWith(": listener") ? words.otherListener : words.done;
}

/** How many things to look for are named. */
const mostNamed = 3;

/** What is likeliest to be seen where things are to be set right, the likeliest first. */
export function lookFor(
  language: Language,
  { model, standing }: Derived,
  position: string,
  move: Move,
): string[] {
  if (move.move !== "set right") return [];
  const seen = standing(position)
    .suspects.flatMap(({ group }) => group.faults)
    .filter((fault) => fault.seen && fault.place === move.place)
    .map((fault) => seenWords(language, model.rig, fault));
  return [...new Set(seen)].slice(0, mostNamed);
}
