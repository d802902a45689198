import { catalogue } from "#core/parts/catalogue.ts";
import type { Socket } from "#core/parts/part.ts";
import { fits } from "#core/parts/plugs.ts";
import { partSo } from "#core/parts/sizes.ts";
import type { Connection, RigPart } from "#core/rig/rig.ts";
import { candidates, type Reach } from "./candidates.ts";
import type { Ends, Patch } from "./patch.ts";
import { made, outputsOf } from "./sockets-of.ts";
import { offTheShelf } from "./stock.ts";

const nothingBetween: Patch = { wires: [], plugged: [] };

/** The outputs that are used together: one, or the two of a pair, left first. */
export function withPartner(outputs: readonly Socket[], name: string): readonly string[] {
  const partner = outputs.find((socket) => socket.name === name)?.partner;
  return outputs.map((socket) => socket.name).filter((one) => one === name || one === partner);
}

/** A part of the size that fits one of some outputs; nothing where its plug fits none. Boxes without plugs stay as they are. */
export const withAt = (outputs: readonly Socket[], part: RigPart): RigPart | undefined =>
  partSo(
    part,
    ({ plugs }) =>
      plugs.length === 0 || plugs.some((plug) => outputs.some((socket) => fits(plug, socket))),
  );

/** A patch by the kinds of its wires, in whatever order and size. */
const kindsOf = ({ wires }: Patch): string =>
  wires
    .map(({ kind }) => kind)
    .sort()
    .join();

/** How well marks agree: left in left, right in right, the near end at the source. */
function agreeing({ from }: Ends, { plugged, wires }: Patch): number {
  const sides = ["left", "right"] as const;
  const side = (text: string) => sides.find((one) => text.includes(one));
  const near = plugged.filter(({ plug, into }) => plug === "near" && into === from.id).length;
  const bulk = wires.filter(({ settings = {} }) =>
    Object.values(settings).includes("3.5 mm"),
  ).length;
  return plugged.reduce(
    (sum, { plug, socket }) => {
      const [one, other] = [side(plug), side(socket)];
      return one === undefined || other === undefined ? sum : sum + (one === other ? 2 : -2);
    },
    near - bulk / 4,
  );
}

const wireOrder = Object.keys(catalogue);

/** Simplest first, then what shops have, then as the catalogue has it. */
const rank = ({ wires }: Patch): number =>
  wires.length * 1000 +
  wires.filter(({ kind }) => !offTheShelf.includes(kind)).length * 100 +
  wires.reduce((sum, { kind }) => sum + wireOrder.indexOf(kind), 0) / 10;

/** Every kind of lead or pair of leads that joins the two ends by an output, or of those with adapters, plugged as its marks say. */
export function choicesOf(ends: Ends, socket: string, reach: Reach): readonly Patch[] {
  const outputs = outputsOf(ends.from);
  const best = new Map<string, { readonly patch: Patch; readonly agrees: number }>();
  for (const patch of candidates(ends, reach, withPartner(outputs, socket))) {
    if (!patch.plugged.some((end) => end.into === ends.from.id && end.socket === socket)) continue;
    const agrees = agreeing(ends, patch);
    const known = best.get(kindsOf(patch));
    if (known === undefined || agrees > known.agrees) best.set(kindsOf(patch), { patch, agrees });
  }
  return [...best.values()].map(({ patch }) => patch).sort((a, b) => rank(a) - rank(b));
}

/** The plainest thing that fits between; nothing where nothing does. */
export const firstPatch = (ends: Ends, socket: string): Patch =>
  choicesOf(ends, socket, "leads")[0] ?? choicesOf(ends, socket, "adapters")[0] ?? nothingBetween;

/** The same kinds of wire between other ends where they fit, else the plainest. */
export function likePatch(ends: Ends, socket: string, like: Patch): Patch {
  const reach = like.wires.some(({ kind }) => catalogue[kind].family !== "lead")
    ? "adapters"
    : "leads";
  const alike = choicesOf(ends, socket, reach).find((patch) => kindsOf(patch) === kindsOf(like));
  return alike ?? firstPatch(ends, socket);
}

/** Whether every plug of a patch still finds its socket. */
export function fitsPatch(ends: Ends, { wires, plugged }: Patch): boolean {
  const parts = new Map([ends.from, ends.into, ...wires].map((part) => [part.id, made(part)]));
  return plugged.every((end) => {
    const plug = parts.get(end.part)?.plugs.find(({ name }) => name === end.plug);
    const socket = parts.get(end.into)?.sockets.find(({ name }) => name === end.socket);
    return plug !== undefined && socket !== undefined && fits(plug, socket);
  });
}

/** A plug put into another socket; what stands there goes where the plug was. */
export function exchanged(
  { wires, plugged }: Patch,
  end: Pick<Connection, "part" | "plug">,
  to: Pick<Connection, "into" | "socket">,
): Patch {
  const own = plugged.find(({ part, plug }) => part === end.part && plug === end.plug);
  return {
    wires,
    plugged: plugged.map((one) => {
      if (one === own) return { ...one, ...to };
      const taken = one.into === to.into && one.socket === to.socket;
      return taken && own ? { ...one, into: own.into, socket: own.socket } : one;
    }),
  };
}
