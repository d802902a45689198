import { catalogue, type PartKind } from "#core/parts/catalogue.ts";
import type { Settings } from "#core/parts/kind.ts";
import type { JackSize } from "#core/parts/plugs.ts";
import type { Connection, Rig, RigPart } from "./rig.ts";
import type { StartPart } from "./start-words.ts";

/** Parts and plugs of a stretch of a rig. */
export interface Piece {
  readonly parts: readonly RigPart[];
  readonly plugged: readonly Connection[];
}

/** What a rig is drawn with: names for its parts, and how many sit there. */
export interface Drawing {
  readonly call: (name: StartPart, number?: number) => string;
  readonly seats: number;
}

/** Every part by the short name of what it is. */
export const byName: Drawing["call"] = (name, number) =>
  number === undefined ? name : `${name} ${number}`;

/** One value for each seat, from 1. */
export const numbered = <Value>(count: number, make: (seat: number) => Value): readonly Value[] =>
  Array.from({ length: count }, (_, at) => make(at + 1));

/** One part of a rig. */
export const part = (id: string, kind: PartKind, settings?: Settings): RigPart => ({
  id,
  kind,
  ...(settings ? { settings } : {}),
});

/** Which plug of a part is in which socket. */
export const plug = (id: string, name: string, into: string, socket: string): Connection => ({
  part: id,
  plug: name,
  into,
  socket,
});

/** Pieces as one. */
export const together = (...all: readonly Piece[]): Piece => ({
  parts: all.flatMap(({ parts }) => parts),
  plugged: all.flatMap(({ plugged }) => plugged),
});

/** A piece with who sits where: what is worn, in the order it is drawn, is the seats' own. */
export function seated(name: string, piece: Piece, seats: readonly string[]): Rig {
  const worn = piece.parts.filter(({ kind }) => catalogue[kind].family === "headphones");
  return {
    name,
    ...piece,
    positions: seats.map((seat, at) => ({
      id: `position ${at + 1}`,
      name: seat,
      wears: worn[at]?.id ?? "",
    })),
  };
}

/** What is worn at each seat, in a socket of this size; small plugs get an adapter where it is large. */
export const sets = (
  { call, seats }: Drawing,
  worn: "headphones" | "in-ears",
  size: JackSize,
  socketOf: (seat: number) => readonly [into: string, socket: string],
): Piece =>
  together(
    ...numbered(seats, (seat): Piece => {
      const id = call(worn, seat);
      const [into, socket] = socketOf(seat);
      if (worn === "in-ears" && size === "6.35 mm") {
        const adapter = call("adapter", seat);
        return {
          parts: [part(adapter, "size adapter"), part(id, worn)],
          plugged: [plug(adapter, "plug", into, socket), plug(id, "plug", adapter, "socket")],
        };
      }
      const settings = worn === "headphones" && size === "3.5 mm" ? { size } : undefined;
      return { parts: [part(id, worn, settings)], plugged: [plug(id, "plug", into, socket)] };
    }),
  );

/** What the three parts of a desk are called. */
interface Desk {
  readonly source: string;
  readonly lead: string;
  readonly mixer: string;
}

/** A laptop on two channels of a mixer. */
export const mixerDesk = ({ source, lead, mixer }: Desk, settings?: Settings): Piece => ({
  parts: [
    part(source, "laptop"),
    part(lead, "insert Y", { stemSize: "3.5 mm" }),
    part(mixer, "mixer", settings),
  ],
  plugged: [
    plug(lead, "stem", source, "phones"),
    plug(lead, "left", mixer, "1"),
    plug(lead, "right", mixer, "2"),
  ],
});

/** A lead for each side, from a pair marked left and right into a pair of inputs. */
export function twoLeads(
  { call }: Pick<Drawing, "call">,
  kind: "TRS lead" | "XLR lead",
  [from, pair]: readonly [string, string],
  into: string,
): Piece {
  const sides = ["left", "right"] as const;
  return {
    parts: sides.map((side) => part(call(`${side} lead`), kind)),
    plugged: sides.flatMap((side) => [
      plug(call(`${side} lead`), "near", from, `${pair} ${side}`),
      plug(call(`${side} lead`), "far", into, `in ${side}`),
    ]),
  };
}

/** A box with a link for each seat's own receiver, and what is worn on that. */
interface Links {
  readonly sender: RigPart;
  readonly receiver: (seat: number) => RigPart;
  readonly worn: "headphones" | "in-ears";
  readonly size: JackSize;
}

/** What is sent to everybody's own receiver. */
export function overLinks(drawing: Drawing, { sender, receiver, worn, size }: Links): Piece {
  const receivers = numbered(drawing.seats, receiver);
  return together(
    {
      parts: [sender, ...receivers],
      plugged: receivers.map(({ id }, at) => plug(id, "link", sender.id, `link ${at + 1}`)),
    },
    sets(drawing, worn, size, (seat) => [receiver(seat).id, "phones"]),
  );
}
