import { catalogue, type PartKind } from "#core/parts/catalogue.ts";
import type { Part, Socket } from "#core/parts/part.ts";
import { sizesOf } from "#core/parts/sizes.ts";
import type { RigPart } from "#core/rig/rig.ts";

/** A part of a patch with what it is made of. */
export interface Piece extends RigPart {
  readonly made: Part;
}

/** A socket that a plug may go into. */
export interface Place {
  readonly into: string;
  readonly socket: Socket;
  readonly end: "from" | "into";
}

/** A part with what it is made of. */
export const made = (part: RigPart): Piece => ({
  ...part,
  made: catalogue[part.kind].make(part.settings),
});

/** Its sockets of one side, as places of one end of a patch. */
export const placesOf = (piece: Piece, side: Socket["side"], end: Place["end"]): readonly Place[] =>
  piece.made.sockets
    .filter((socket) => socket.side === side)
    .map((socket) => ({ into: piece.id, socket, end }));

/** Leads with a plug at every end. */
export const leads = (id: string): readonly Piece[] =>
  kinds(
    id,
    (part) => part.plugs.length > 1 && !part.sockets.some(({ side }) => side !== "through"),
  );

/** These make a way longer or weaker, which mends nothing. */
const noCure: readonly PartKind[] = ["TRS extension lead", "in-line volume wheel"];

/** What one plug goes through to a socket of another kind or to several: adapters and splitters. */
export const passing = (id: string): readonly Piece[] =>
  kinds(
    id,
    (part) => part.plugs.length === 1 && part.sockets.some(({ side }) => side === "through"),
  ).filter(({ kind }) => !noCure.includes(kind));

const wireFamilies: readonly string[] = ["lead", "adapter", "splitter"];

const kinds = (id: string, wanted: (part: Part) => boolean): readonly Piece[] =>
  (Object.keys(catalogue) as PartKind[])
    .filter((kind) => wireFamilies.includes(catalogue[kind].family))
    .flatMap((kind) => sizesOf(kind).map((settings) => made({ id, kind, settings })))
    .filter(({ made: part }) => part.through === undefined && wanted(part));
