import { added } from "#core/drawing/adding.ts";
import { positionCopied } from "#core/drawing/copying.ts";
import type { Edited } from "#core/drawing/edited.ts";
import type { Called } from "#core/drawing/putting.ts";
import { build, type Connection, type Rig, type RigPart } from "#core/rig/rig.ts";
import type { Feed } from "./stages.ts";

/** How one more can listen. */
export type Way =
  | { readonly way: "free output"; readonly part: string; readonly socket: string }
  | { readonly way: "more outputs"; readonly part: string }
  | { readonly way: "splitter"; readonly part: string; readonly socket: string }
  | { readonly way: "another amplifier"; readonly part: string; readonly socket: string };

/** A rig with one more listener. */
export interface Made {
  readonly way: Way;
  readonly rig: Rig;
}

/** Every way for one more to listen to what a position gets. */
export const rigsWithOneMore = (rig: Rig, feed: Feed, called: Called): readonly Made[] => [
  ...copies(rig, feed.position),
  ...splitters(rig, feed, called),
  ...amplifiers(rig, feed, called),
];

const rigIn = (edited: Edited): readonly Rig[] => ("rig" in edited ? [edited.rig] : []);

/** The position once more, on the next output like its own. */
function copies(rig: Rig, position: string): readonly Made[] {
  return rigIn(positionCopied(rig, position)).map((next) => ({ rig: next, way: wayOf(rig, next) }));
}

function wayOf(rig: Rig, next: Rig): Way {
  const fresh = next.parts.filter(({ id }) => rig.parts.every((part) => part.id !== id));
  const isFresh = (id: string) => fresh.some((part) => part.id === id);
  const into = next.plugged.find((end) => isFresh(end.part) && !isFresh(end.into));
  const [part, socket] = [into?.into ?? "", into?.socket ?? ""];
  const built = build(next);
  if (
    fresh.some(
      ({ id }) => built.part(id).through !== undefined && built.part(id).family === "amplifier",
    )
  )
    return { way: "another amplifier", part, socket };
  const grown = rig.parts.some((one) => one.id === part && !next.parts.includes(one));
  return grown ? { way: "more outputs", part } : { way: "free output", part, socket };
}

/** A set like what is worn already. */
const likeWorn = (rig: Rig, worn: string): RigPart | undefined =>
  rig.parts.find(({ id }) => id === worn);

/** What was added is set as what it is like. */
function hung(rig: Rig, like: RigPart, spot: Pick<Connection, "into" | "socket">, called: Called) {
  return rigIn(added(rig, like.kind, { place: "socket", spot }, called)).map((next): Rig => {
    const { settings = {} } = like;
    const { size: _, ...same } = settings;
    const isNew = ({ id }: RigPart) => rig.parts.every((part) => part.id !== id);
    return {
      ...next,
      parts: next.parts.map((part) =>
        isNew(part) && part.kind === like.kind
          ? { ...part, settings: { ...same, ...part.settings } }
          : part,
      ),
    };
  });
}

/** A splitter where the set is plugged now, and another like it beside. */
function splitters(rig: Rig, { worn }: Feed, called: Called): readonly Made[] {
  const like = likeWorn(rig, worn.part);
  const end = rig.plugged.find(({ part }) => part === worn.part);
  if (like === undefined || end === undefined) return [];
  const place = { place: "plug", end: { part: end.part, plug: end.plug } } as const;
  return rigIn(added(rig, "splitter", place, called)).flatMap((split) => {
    const splitter = split.parts.find(({ id }) => rig.parts.every((part) => part.id !== id));
    if (splitter === undefined) return [];
    const way = { way: "splitter", part: end.into, socket: end.socket } as const;
    return freeOf(split, splitter.id)
      .slice(0, 1)
      .flatMap((socket) => hung(split, like, { into: splitter.id, socket }, called))
      .map((next) => ({ way, rig: next }));
  });
}

/** Outputs of a part that nothing stands in. */
function freeOf(rig: Rig, id: string): readonly string[] {
  const used = rig.plugged.filter(({ into }) => into === id).map(({ socket }) => socket);
  return build(rig)
    .part(id)
    .sockets.filter(({ side, harms, name }) => side !== "in" && !harms && !used.includes(name))
    .map(({ name }) => name);
}

/** Another amplifier on each free output of the boxes on the way, with a set like that worn. */
function amplifiers(rig: Rig, { stages, worn }: Feed, called: Called): readonly Made[] {
  const like = likeWorn(rig, worn.part);
  if (like === undefined) return [];
  return stages.flatMap(({ part }) =>
    freeOf(rig, part).flatMap((socket) => {
      const spot = { into: part, socket };
      const place = { place: "socket", spot } as const;
      return rigIn(added(rig, "headphone amplifier", place, called)).flatMap((next) => {
        const amplifier = next.parts.find(
          ({ id, kind }) =>
            kind === "headphone amplifier" && rig.parts.every((one) => one.id !== id),
        );
        if (amplifier === undefined) return [];
        const at = { into: amplifier.id, socket: freeOf(next, amplifier.id)[0] ?? "" };
        const way = { way: "another amplifier", part, socket } as const;
        return hung(next, like, at, called).map((done) => ({ way, rig: done }));
      });
    }),
  );
}
