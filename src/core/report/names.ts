import type { Rig } from "#core/rig/rig.ts";
import type { Language } from "#core/words/language.ts";
import { placeText } from "#core/words/move-text.ts";

/** A position by what stands on its tape. */
export const seatName = (rig: Rig, position: string): string =>
  rig.positions.find(({ id }) => id === position)?.name ?? position;

/** A place as it is said: a part, a socket of a box, or who sits at a position. */
export const placeName = (language: Language, rig: Rig, place: string): string =>
  placeText(language, rig, place);
