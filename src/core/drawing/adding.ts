import { catalogue, type PartKind } from "#core/parts/catalogue.ts";
import { newOf } from "#core/parts/sizes.ts";
import { made } from "#core/patching/sockets-of.ts";
import { isFed } from "#core/rig/reach.ts";
import { build, type Rig, type RigPart } from "#core/rig/rig.ts";
import { checked, type Edited, type PlugEnd, plugAt, refuse, type Spot } from "./edited.ts";
import { joinOf } from "./joining.ts";
import { freshName, nextPosition } from "./names.ts";
import { type Called, outward, pluggedIn, put, withPatch } from "./putting.ts";

/** Where something new may go: into a free socket, in the way before a plug, or in front of a box that nothing feeds. */
export type Place =
  | { readonly place: "socket"; readonly spot: Spot }
  | { readonly place: "plug"; readonly end: PlugEnd }
  | { readonly place: "box"; readonly part: string };

/** A part of a kind put into a place, with the leads it takes. */
export function added(rig: Rig, kind: PartKind, place: Place, called: Called): Edited {
  const part = newOf(freshName(rig, called(kind)), kind);
  switch (place.place) {
    case "socket":
      return hungOn(rig, part, place.spot, called);
    case "plug":
      return putBetween(rig, part, place.end, called);
    case "box":
      return putBefore(rig, part, place.part, called);
  }
}

/** What is worn becomes a position. */
function hungOn(rig: Rig, part: RigPart, spot: Spot, called: Called): Edited {
  const next = put(rig, part, spot, called);
  if (next === undefined) return refuse({ refused: "nothing joins", kind: part.kind });
  const worn = catalogue[part.kind].family === "headphones";
  const positions = worn ? [...rig.positions, nextPosition(rig, part.id)] : rig.positions;
  return checked({ ...next, positions }, rig);
}

/** What stands in a socket hangs on the new part instead, and that on the socket. Plugs that come in two sizes are taken in the one that fits. */
function putBetween(rig: Rig, part: RigPart, end: PlugEnd, called: Called): Edited {
  const own = rig.plugged.find(({ part: id, plug }) => id === end.part && plug === end.plug);
  if (own === undefined) return refuse({ refused: "nothing free", part: end.part });
  const without = { ...rig, plugged: rig.plugged.filter((one) => one !== own), positions: [] };
  const { into, socket } = own;
  const before = put(without, part, { into, socket }, called, plugAt(build(rig), end));
  const now = before?.parts.find(({ id }) => id === part.id);
  const next = before && now && pluggedIn(before, end, part.id, outward(made(now)));
  return next === undefined
    ? refuse({ refused: "nothing joins", kind: part.kind })
    : checked({ ...next, positions: rig.positions }, rig);
}

/** A source in front of a box, from the first of its outputs that a lead leads from. */
function putBefore(rig: Rig, from: RigPart, box: string, called: Called): Edited {
  const into = rig.parts.find(({ id }) => id === box);
  if (into === undefined || isFed(build(rig), box))
    return refuse({ refused: "nothing free", part: box });
  for (const { name, side } of made(from).sockets) {
    if (side !== "out") continue;
    const patch = joinOf({ from, into }, name);
    if (patch.plugged.length > 0)
      return checked(withPatch({ ...rig, parts: [from, ...rig.parts] }, patch, called), rig);
  }
  return refuse({ refused: "nothing joins", kind: from.kind });
}
