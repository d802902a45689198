import { catalogue, type PartKind } from "#core/parts/catalogue.ts";
import type { Settings } from "#core/parts/kind.ts";
import type { Part, Socket } from "#core/parts/part.ts";
import { fits } from "#core/parts/plugs.ts";
import type { Patch } from "#core/patching/patch.ts";

import { isFed } from "#core/rig/reach.ts";
import { build, type Connection, type Rig, type RigPart } from "#core/rig/rig.ts";
import {
  checked,
  type Edited,
  type PlugEnd,
  plugAt,
  refuse,
  type Spot,
  socketAt,
} from "./edited.ts";
import { joinOf } from "./joining.ts";
import { freshName, nextPosition } from "./names.ts";
import { plugFor, settingsSo } from "./sizes.ts";

/** Where something new may go: into a free socket, in the way before a plug, or in front of a box that nothing feeds. */
export type Place =
  | { readonly place: "socket"; readonly spot: Spot }
  | { readonly place: "plug"; readonly end: PlugEnd }
  | { readonly place: "box"; readonly part: string };

/** How a kind usually comes where that is not what is typical of one alone: most headphone amplifiers have four outputs. Common practice, no source. */
const usually: Readonly<Partial<Record<PartKind, Settings>>> = {
  "headphone amplifier": { outputs: 4 },
};

/** What a kind is called in the language of the page. */
export type Called = (kind: PartKind) => string;

/** A part of a kind put into a place, with the leads it takes. */
export function added(rig: Rig, kind: PartKind, place: Place, called: Called): Edited {
  switch (place.place) {
    case "socket":
      return hungOn(rig, kind, place.spot, called);
    case "plug":
      return putBetween(rig, kind, place.end, called);
    case "box":
      return putBefore(rig, kind, place.part, called);
  }
}

const partOf = (rig: Rig, kind: PartKind, called: Called, chosen?: Settings): RigPart => {
  const settings = { ...usually[kind], ...chosen };
  const id = freshName(rig, called(kind));
  return { id, kind, ...(Object.keys(settings).length === 0 ? {} : { settings }) };
};

/** Something with a plug of its own goes in by that; a box by the plainest lead. What is worn becomes a position. */
function hungOn(rig: Rig, kind: PartKind, spot: Spot, called: Called): Edited {
  const socket = socketAt(build(rig), spot);
  if (socket === undefined) return refuse({ refused: "nothing free", part: spot.into });
  const settings = settingsSo(kind, undefined, (part) => plugFor(part, socket) !== undefined);
  if (settings === undefined) return ledInto(rig, kind, spot, called);
  const part = partOf(rig, kind, called, settings);
  const plug = plugFor(catalogue[kind].make(settings), socket)?.name ?? "";
  const next: Rig = {
    ...rig,
    parts: [...rig.parts, part],
    plugged: [...rig.plugged, { part: part.id, plug, ...spot }],
  };
  const worn = catalogue[kind].family === "headphones";
  const positions = worn ? [...rig.positions, nextPosition(rig, part.id)] : rig.positions;
  return checked({ ...next, positions }, rig);
}

function ledInto(rig: Rig, kind: PartKind, { into, socket }: Spot, called: Called): Edited {
  const from = rig.parts.find(({ id }) => id === into);
  if (from === undefined) return refuse({ refused: "nothing free", part: into });
  const part = partOf(rig, kind, called);
  const patch = joinOf({ from, into: part }, socket);
  if (patch.plugged.length === 0) return refuse({ refused: "nothing joins", kind });
  return checked(withPatch({ ...rig, parts: [...rig.parts, part] }, patch, called), rig);
}

/** The leads of a patch in a rig, by names that are free in it. */
function withPatch(rig: Rig, { wires, plugged }: Patch, called: Called): Rig {
  let next = rig;
  const names = new Map<string, string>();
  for (const wire of wires) {
    const id = freshName(next, called(wire.kind));
    names.set(wire.id, id);
    next = { ...next, parts: [...next.parts, { ...wire, id }] };
  }
  const named = (id: string) => names.get(id) ?? id;
  const ends = plugged.map((end) => ({ ...end, part: named(end.part), into: named(end.into) }));
  return { ...next, plugged: [...next.plugged, ...ends] };
}

/** What stands in a socket hangs on the new part instead, and that on the socket. Plugs that come in two sizes are taken in the one that fits. */
function putBetween(rig: Rig, kind: PartKind, end: PlugEnd, called: Called): Edited {
  const own = rig.plugged.find(({ part, plug }) => part === end.part && plug === end.plug);
  const out = rig.parts.find(({ id }) => id === end.part);
  if (own === undefined || out === undefined)
    return refuse({ refused: "nothing free", part: end.part });
  const without = { ...rig, plugged: rig.plugged.filter((one) => one !== own), positions: [] };
  const spot: Spot = { into: own.into, socket: own.socket };
  const socket = socketAt(build(rig), own);
  const plug = plugAt(build(rig), end);
  const wanted = (part: Part) =>
    socket !== undefined &&
    plugFor(part, socket) !== undefined &&
    plug !== undefined &&
    takes(part, plug);
  const settings = settingsSo(kind, undefined, wanted);
  const part = partOf(rig, kind, called, settings);
  const before =
    settings === undefined ? ledBefore(without, part, spot, called) : hung(without, part, spot);
  if (before === undefined) return refuse({ refused: "nothing joins", kind });
  return hungAgain({ ...before, positions: rig.positions }, out, own, part, rig);
}

const outward = ({ sockets }: Part): readonly Socket[] =>
  sockets.filter(({ side }) => side !== "in");
const takes = (part: Part, plug: Parameters<typeof fits>[0]): boolean =>
  outward(part).some((socket) => fits(plug, socket));

/** A part by its own plug in a socket. */
function hung(rig: Rig, part: RigPart, spot: Spot): Rig | undefined {
  const socket = socketAt(build(rig), spot);
  const plug = socket && plugFor(catalogue[part.kind].make(part.settings), socket);
  return (
    plug && {
      ...rig,
      parts: [...rig.parts, part],
      plugged: [...rig.plugged, { part: part.id, plug: plug.name, ...spot }],
    }
  );
}

function ledBefore(rig: Rig, part: RigPart, spot: Spot, called: Called): Rig | undefined {
  const from = rig.parts.find(({ id }) => id === spot.into);
  const socket = socketAt(build(rig), spot);
  if (from === undefined || socket === undefined) return undefined;
  const made = catalogue[part.kind].make();
  if (made.plugs.length > 0) return plugFor(made, socket) ? hung(rig, part, spot) : undefined;
  const patch = joinOf({ from, into: part }, spot.socket);
  return patch.plugged.length === 0
    ? undefined
    : withPatch({ ...rig, parts: [...rig.parts, part] }, patch, called);
}

/** The first output of the new part that the plug goes into, in its size or in the other. */
function hungAgain(rig: Rig, part: RigPart, own: Connection, into: RigPart, before: Rig): Edited {
  const sockets = outward(catalogue[into.kind].make(into.settings));
  const meets = (made: Part): Socket | undefined => {
    const plug = made.plugs.find(({ name }) => name === own.plug);
    return plug && sockets.find((socket) => fits(plug, socket));
  };
  const settings = settingsSo(part.kind, part.settings, (made) => meets(made) !== undefined);
  const socket = settings && meets(catalogue[part.kind].make(settings));
  if (settings === undefined || socket === undefined)
    return refuse({ refused: "nothing joins", kind: into.kind });
  const same = settings === part.settings || part.settings === undefined;
  const resized = same && Object.keys(settings).length === 0 ? part : { ...part, settings };
  return checked(
    {
      ...rig,
      parts: rig.parts.map((one) => (one.id === part.id ? resized : one)),
      plugged: [...rig.plugged, { ...own, into: into.id, socket: socket.name }],
    },
    before,
  );
}

/** A source in front of a box, from the first of its outputs that a lead leads from. */
function putBefore(rig: Rig, kind: PartKind, box: string, called: Called): Edited {
  const into = rig.parts.find(({ id }) => id === box);
  const built = build(rig);
  if (into === undefined || isFed(built, box))
    return refuse({ refused: "nothing free", part: box });
  const from = partOf(rig, kind, called);
  for (const { name, side } of catalogue[kind].make().sockets) {
    if (side !== "out") continue;
    const patch = joinOf({ from, into }, name);
    if (patch.plugged.length > 0)
      return checked(withPatch({ ...rig, parts: [from, ...rig.parts] }, patch, called), rig);
  }
  return refuse({ refused: "nothing joins", kind });
}
