import type { PartKind } from "#core/parts/catalogue.ts";
import type { Part, Plug, Socket } from "#core/parts/part.ts";
import { fits } from "#core/parts/plugs.ts";
import { partSo, plugFor } from "#core/parts/sizes.ts";
import type { Patch } from "#core/patching/patch.ts";
import { made } from "#core/patching/sockets-of.ts";
import { build, type Rig, type RigPart } from "#core/rig/rig.ts";
import { type PlugEnd, type Spot, socketAt } from "./edited.ts";
import { joinOf } from "./joining.ts";
import { freshName } from "./names.ts";

/** What a kind is called in the language of the page. */
export type Called = (kind: PartKind) => string;

/** The sockets that a part sends from or passes on by. */
export const outward = ({ sockets }: Part): readonly Socket[] =>
  sockets.filter(({ side }) => side !== "in");

/**
 * A new part in a socket: by a plug of its own, in the size that fits and, where it can be, takes `carried`; without one by the plainest lead.
 * Nothing where neither goes.
 */
export function put(
  rig: Rig,
  part: RigPart,
  spot: Spot,
  called: Called,
  carried?: Plug,
): Rig | undefined {
  if (made(part).plugs.length === 0) return ledInto(rig, part, spot, called);
  const socket = socketAt(build(rig), spot);
  if (socket === undefined) return undefined;
  const goesIn = (one: Part): boolean => plugFor(one, socket) !== undefined;
  const takes = (one: Part): boolean =>
    carried === undefined || outward(one).some((out) => fits(carried, out));
  const fitting = partSo(part, (one) => goesIn(one) && takes(one)) ?? partSo(part, goesIn);
  const plug = fitting && plugFor(made(fitting), socket);
  return (
    plug && {
      ...rig,
      parts: [...rig.parts, fitting],
      plugged: [...rig.plugged, { part: part.id, plug: plug.name, ...spot }],
    }
  );
}

function ledInto(rig: Rig, part: RigPart, spot: Spot, called: Called): Rig | undefined {
  const from = rig.parts.find(({ id }) => id === spot.into);
  const patch = from && joinOf({ from, into: part }, spot.socket);
  return patch && patch.plugged.length > 0
    ? withPatch({ ...rig, parts: [...rig.parts, part] }, patch, called)
    : undefined;
}

/** The leads of a patch in a rig, by names that are free in it. */
export function withPatch(rig: Rig, { wires, plugged }: Patch, called: Called): Rig {
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

/** A plug that hangs loose in the first of some sockets that it goes into, its part in its size or in another; nothing where there is none. */
export function pluggedIn(
  rig: Rig,
  { part: id, plug: name }: PlugEnd,
  into: string,
  sockets: readonly Socket[],
): Rig | undefined {
  const part = rig.parts.find((one) => one.id === id);
  const meets = (one: Part): Socket | undefined => {
    const plug = one.plugs.find((each) => each.name === name);
    return plug && sockets.find((socket) => fits(plug, socket));
  };
  const fitting = part && partSo(part, (one) => meets(one) !== undefined);
  const socket = fitting && meets(made(fitting));
  return (
    socket && {
      ...rig,
      parts: rig.parts.map((one) => (one === part ? fitting : one)),
      plugged: [...rig.plugged, { part: id, plug: name, into, socket: socket.name }],
    }
  );
}
