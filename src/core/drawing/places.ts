import { catalogue, type PartKind } from "#core/parts/catalogue.ts";
import { fits } from "#core/parts/plugs.ts";
import { newOf, sized } from "#core/parts/sizes.ts";
import { made } from "#core/patching/sockets-of.ts";
import { isFed } from "#core/rig/reach.ts";
import type { BuiltRig } from "#core/rig/rig.ts";
import type { Place } from "./adding.ts";
import { plugAt, socketAt } from "./edited.ts";

/** Where something of a kind may go. Whether a lead joins it there is asked when it is put. */
export function placesFor(rig: BuiltRig, kind: PartKind): readonly Place[] {
  return catalogue[kind].family === "source"
    ? unfed(rig)
    : [...sockets(rig, kind), ...plugs(rig, kind)];
}

const unfed = (rig: BuiltRig): readonly Place[] =>
  rig.parts.flatMap(({ id }): Place[] => {
    const takes = rig.part(id).sockets.some(({ side }) => side === "in");
    return takes && !isFed(rig, id) ? [{ place: "box", part: id }] : [];
  });

/** Free sockets that send or pass on, where the plug fits; a box without a plug is led into by a lead. */
function sockets(rig: BuiltRig, kind: PartKind): readonly Place[] {
  const all = sized(newOf("", kind)).map(made);
  const byLead = all.every(({ plugs: own }) => own.length === 0);
  const used = new Set(rig.plugged.map(({ into, socket }) => `${into}\n${socket}`));
  return rig.parts.flatMap(({ id }) =>
    rig
      .part(id)
      .sockets.filter((socket) => socket.side !== "in" && !used.has(`${id}\n${socket.name}`))
      .filter((socket) =>
        byLead
          ? socket.side === "out" && socket.kind !== "link"
          : all.some((one) => one.plugs.some((plug) => fits(plug, socket))),
      )
      .map(({ name }): Place => ({ place: "socket", spot: { into: id, socket: name } })),
  );
}

/** Plugs in outputs that what has outputs of its own may go before. */
function plugs(rig: BuiltRig, kind: PartKind): readonly Place[] {
  const all = sized(newOf("", kind)).map(made);
  const passes = all.filter(({ sockets: own }) => own.some(({ side }) => side !== "in"));
  return rig.plugged.flatMap((end): Place[] => {
    const [plug, socket] = [plugAt(rig, end), socketAt(rig, end)];
    if (plug === undefined || socket === undefined || socket.side === "in") return [];
    const goesIn = passes.some(
      ({ plugs: own, sockets: out }) =>
        out.some((one) => one.side !== "in" && (one.kind !== "link") === (plug.kind !== "link")) &&
        (own.length === 0 ? socket.kind !== "link" : own.some((one) => fits(one, socket))),
    );
    return goesIn ? [{ place: "plug", end: { part: end.part, plug: end.plug } }] : [];
  });
}
