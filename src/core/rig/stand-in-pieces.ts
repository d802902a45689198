import type { PartKind } from "#core/parts/catalogue.ts";
import type { Settings } from "#core/parts/kind.ts";
import type { JackSize } from "#core/parts/plugs.ts";
import type { Connection, RigPart } from "./rig.ts";

/** Parts and plugs of a stretch of a rig. */
export interface Piece {
  readonly parts: readonly RigPart[];
  readonly plugged: readonly Connection[];
}

/** One value for each seat, from 1. */
export const numbered = <Value>(count: number, make: (seat: number) => Value): readonly Value[] =>
  Array.from({ length: count }, (_, at) => make(at + 1));

/** One part of a rig. */
export const part = (id: string, kind: PartKind, settings?: Settings): RigPart => ({
  id,
  kind,
  ...(settings ? { settings } : {}),
});

/** A plug, told as `part: plug`, in a socket. */
export const plug = (end: string, into: string, socket: string): Connection => {
  const [id = "", name = ""] = end.split(": ");
  return { part: id, plug: name, into, socket };
};

/** Pieces as one. */
export const together = (...all: readonly Piece[]): Piece => ({
  parts: all.flatMap(({ parts }) => parts),
  plugged: all.flatMap(({ plugged }) => plugged),
});

/** What is worn at each seat, in a socket of this size; small plugs get an adapter where it is large. */
export function sets(
  listeners: number,
  worn: string,
  size: JackSize,
  socketOf: (seat: number) => readonly [into: string, socket: string],
): Piece {
  return together(
    ...numbered(listeners, (seat): Piece => {
      const id = `${worn} ${seat}`;
      const [into, socket] = socketOf(seat);
      const adapter = `adapter ${seat}`;
      if (worn === "headphones")
        return {
          parts: [part(id, "headphones", { size })],
          plugged: [plug(`${id}: plug`, into, socket)],
        };
      if (size === "3.5 mm")
        return { parts: [part(id, "in-ears")], plugged: [plug(`${id}: plug`, into, socket)] };
      return {
        parts: [part(adapter, "size adapter"), part(id, "in-ears")],
        plugged: [plug(`${adapter}: plug`, into, socket), plug(`${id}: plug`, adapter, "socket")],
      };
    }),
  );
}
