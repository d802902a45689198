import type { PartKind } from "#core/parts/catalogue.ts";
import type { Settings } from "#core/parts/kind.ts";
import type { Connection, Rig, RigPart } from "#core/rig/rig.ts";

/** A kind of part, and what is said of this one where that is not typical. */
export type Said = PartKind | readonly [kind: PartKind, settings: Settings];

/** Parts by id, and plugs in sockets as `part: plug > part: socket`. */
export interface Piece {
  readonly parts: Readonly<Record<string, Said>>;
  readonly plugged: readonly string[];
}

/** A rig of pieces, with a position for everything that is worn. Throws on a plug that is not so written. */
export function drawn(name: string, wears: readonly string[], ...pieces: readonly Piece[]): Rig {
  return {
    name,
    parts: pieces.flatMap(({ parts }) => Object.entries(parts).map(partOf)),
    plugged: pieces.flatMap(({ plugged }) => plugged.map(connectionOf)),
    positions: wears.map((id, at) => ({
      id: `position ${at + 1}`,
      name: `${at + 1} ${id}`,
      wears: id,
    })),
  };
}

const partOf = ([id, said]: [string, Said]): RigPart =>
  typeof said === "string" ? { id, kind: said } : { id, kind: said[0], settings: said[1] };

function connectionOf(line: string): Connection {
  const [, part, plug, into, socket] = /^(.+?): (.+) > (.+?): (.+)$/.exec(line) ?? [];
  if (part === undefined || plug === undefined || into === undefined || socket === undefined)
    throw new Error(`no plug in a socket: ${line}`);
  return { part, plug, into, socket };
}

/** One lead of two plugs for each side, between two boxes. */
export const twoLeads = (
  kind: PartKind,
  id: string,
  from: readonly [box: string, left: string, right: string],
  to: readonly [box: string, left: string, right: string],
): Piece => ({
  parts: { [`${id} left`]: kind, [`${id} right`]: kind },
  plugged: (["left", "right"] as const).flatMap((side, at) => [
    `${id} ${side}: near > ${from[0]}: ${from[at + 1]}`,
    `${id} ${side}: far > ${to[0]}: ${to[at + 1]}`,
  ]),
});

/** A headphone amplifier with one set of headphones, named after it. */
export const listener = (id: string, amplifier: Said = "headphone amplifier"): Piece => ({
  parts: { [id]: amplifier, [`${id}'s`]: "headphones" },
  plugged: [`${id}'s: plug > ${id}: output 1`],
});

/** One of a few, in turn. */
export const turn = <T>(all: readonly T[], at: number): T => all[at % all.length] as T;
