import type { Connection } from "./rig.ts";
import { numbered, type Piece, part } from "./stand-in-pieces.ts";
import type { StartPart } from "./start-words.ts";

/** What a start is drawn with: names for its parts, and how many sit there. */
export interface Drawing {
  readonly call: (name: StartPart, number?: number) => string;
  readonly seats: number;
}

/** Which plug of a part is in which socket, by what the words call the parts. */
export const joined = (id: string, name: string, into: string, socket: string): Connection => ({
  part: id,
  plug: name,
  into,
  socket,
});

/** A start drawn, but for who sits where. */
export type Make = (drawing: Drawing) => Piece;

/** Headphones at each seat, straight into a socket. */
export function worn(
  { call, seats }: Drawing,
  at: (seat: number) => readonly [into: string, socket: string],
): Piece {
  const ids = numbered(seats, (seat) => call("headphones", seat));
  return {
    parts: ids.map((id) => part(id, "headphones")),
    plugged: ids.map((id, index) => joined(id, "plug", ...at(index + 1))),
  };
}

/** A lead for each side, from a pair marked left and right into a pair of inputs. */
export function twoLeads(
  { call }: Drawing,
  kind: "TRS lead" | "XLR lead",
  [from, pair]: readonly [string, string],
  into: string,
): Piece {
  const sides = ["left", "right"] as const;
  return {
    parts: sides.map((side) => part(call(`${side} lead`), kind, { metres: 3 })),
    plugged: sides.flatMap((side) => [
      joined(call(`${side} lead`), "near", from, `${pair} ${side}`),
      joined(call(`${side} lead`), "far", into, `in ${side}`),
    ]),
  };
}
