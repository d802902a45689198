import { chainTo } from "./chain.ts";
import type { Move } from "./moves.ts";
import type { BuiltRig, Connection, Rig, RigPart } from "./rig.ts";

/** A rig as moves have left it, and what a 'put back' would bring back. */
export interface Arranged {
  readonly rig: Rig;
  /** For each part that is laid aside or moved: where its plugs stood before. */
  readonly before: ReadonlyMap<string, readonly Connection[]>;
}

export const asDrawn = (rig: Rig): Arranged => ({ rig, before: new Map() });

/** The id of the known good part that stands in for another. */
export const standInFor = (part: string): string => `known good ${part}`;

/** Parts of which a good one stands in on the way to a position. */
export function asideAt(rig: BuiltRig, position: string): readonly string[] {
  const way = new Set(chainTo(rig, position).map(({ part }) => part));
  return rig.parts.map(({ id }) => id).filter((id) => way.has(standInFor(id)));
}

/**
 * Which plug is in which socket after one more move, who wears what, and how the controls stand. The same rig where the move changes none
 * of that, or names what is not there.
 */
export function arranged(now: Arranged, move: Move): Arranged {
  switch (move.move) {
    case "exchanged":
      return { ...now, rig: renamed(now.rig, exchange(move.parts)) };
    case "known good in":
      return laidAside(now, move.part);
    case "put back":
      return putBack(now, move.part);
    case "moved":
      return moved(now, move);
    case "turned round":
      return { ...now, rig: turned(now.rig, move.position) };
    case "set":
      return { ...now, rig: set(now.rig, move.part, move.control, move.value) };
    case "set right":
    case "replaced":
    case "plugged anew":
      return now;
  }
}

const exchange =
  ([a, b]: readonly [string, string]) =>
  (id: string): string => {
    if (id === a) return b;
    return id === b ? a : id;
  };

/** Every plug, socket and head that one part had, another has. */
const renamed = (rig: Rig, name: (id: string) => string): Rig => ({
  ...rig,
  plugged: rig.plugged.map((one) => ({ ...one, part: name(one.part), into: name(one.into) })),
  positions: rig.positions.map((one) => ({ ...one, wears: name(one.wears) })),
});

const plugsOf = (rig: Rig, part: string): readonly Connection[] =>
  rig.plugged.filter((one) => one.part === part);

function laidAside({ rig, before }: Arranged, part: string): Arranged {
  const old = rig.parts.find(({ id }) => id === part);
  if (old === undefined || rig.parts.some(({ id }) => id === standInFor(part)))
    return { rig, before };
  const good: RigPart = { ...old, id: standInFor(part), good: true };
  const now = renamed(rig, (id) => (id === part ? good.id : id));
  return {
    rig: { ...now, parts: [...now.parts, good] },
    before: new Map([...before, [part, plugsOf(rig, part)]]),
  };
}

function putBack({ rig, before }: Arranged, part: string): Arranged {
  const plugs = before.get(part);
  if (plugs === undefined) return { rig, before };
  const rest = new Map([...before].filter(([id]) => id !== part));
  const good = standInFor(part);
  if (rig.parts.some(({ id }) => id === good)) {
    const now = renamed(rig, (id) => (id === good ? part : id));
    return { rig: { ...now, parts: now.parts.filter(({ id }) => id !== good) }, before: rest };
  }
  const plugged = rig.plugged.map(
    (one) => plugs.find(({ part: id, plug }) => id === one.part && plug === one.plug) ?? one,
  );
  return { rig: { ...rig, plugged }, before: rest };
}

function moved(
  { rig, before }: Arranged,
  { part, plug, into, socket }: Extract<Move, { move: "moved" }>,
): Arranged {
  const there = rig.plugged.some((one) => one.into === into && one.socket === socket);
  const known = rig.parts.some(({ id }) => id === into);
  if (there || !known || !rig.plugged.some((one) => one.part === part && one.plug === plug))
    return { rig, before };
  const plugged = rig.plugged.map((one) =>
    one.part === part && one.plug === plug ? { ...one, into, socket } : one,
  );
  const first = before.get(part) ?? plugsOf(rig, part);
  return { rig: { ...rig, plugged }, before: new Map([...before, [part, first]]) };
}

const turned = (rig: Rig, position: string): Rig => ({
  ...rig,
  positions: rig.positions.map((one) =>
    one.id === position ? { ...one, turned: one.turned !== true } : one,
  ),
});

const set = (rig: Rig, part: string, control: string, value: number): Rig => ({
  ...rig,
  parts: rig.parts.map((one) =>
    one.id === part ? { ...one, controls: { ...one.controls, [control]: value } } : one,
  ),
});
