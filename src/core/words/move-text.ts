import type { Move } from "#core/rig/moves.ts";
import { clientId, listenerOf, operatorId, type Rig } from "#core/rig/rig.ts";
import type { Language } from "./language.ts";

/** A move as somebody is told to make it, without its full stop. */
export const moveText = (language: Language, rig: Rig, move: Move): string =>
  worded(language, rig, move, "tell");

/** A move as the log has it. */
export const movedText = (language: Language, rig: Rig, move: Move): string =>
  worded(language, rig, move, "told");

function worded(language: Language, rig: Rig, move: Move, as: "tell" | "told"): string {
  const words = language.moves[move.move][as] as (
    move: Move,
    name: (id: string) => string,
  ) => string;
  return words(move, (id) => placeText(language, rig, id));
}

/** A part, a socket of a box, a seat or a person, as it is said in a sentence. */
export function placeText(
  { operator, client, shared, names }: Language,
  rig: Rig,
  place: string,
): string {
  if (place === operatorId) return operator;
  if (place === clientId) return client;
  if (rig.positions.length > 1 && place === rig.positions.map(({ id }) => id).join(", "))
    return shared;
  const seat = rig.positions.find(({ id }) => listenerOf(id) === place || id === place);
  if (seat !== undefined) return seat.name;
  return names.within(place);
}
