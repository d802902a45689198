import type { Refusal } from "#core/drawing/edited.ts";
import type { Room } from "#core/level/audible.ts";
import type { Wanted } from "#core/level/heard.ts";
import type { View } from "./page.ts";

/** How loud it is at a position, and what of that is looked at. */
export interface LevelsView {
  readonly screen: "levels";
  readonly position: string;
  /** Where one came from; left out, the board. */
  readonly from?: View;
  /** How loud it should be; left out, as music. */
  readonly wanted?: Wanted;
  /** Where it is listened; left out, in a quiet room. */
  readonly room?: Room;
  /** The box whose numbers are open. */
  readonly open?: string | undefined;
  /** Why the last number was not entered. */
  readonly refused?: Refusal | undefined;
}

/** Where hiss is looked for unless somebody says. */
export const usualRoom: Room = "quiet room";
