import type { Patch } from "#core/patching/patch.ts";
import { exchanged, fitsPatch, likePatch, withPartner } from "#core/patching/patches.ts";
import { inputsOf, outputsOf } from "#core/patching/sockets-of.ts";
import type { Connection } from "#core/rig/rig.ts";
import type { Plan, PlugEnd } from "./plan.ts";

type Place = Pick<Connection, "into" | "socket">;

/** Pointing at an output: what is in the hand goes there; else the lead leaves by it, on both of a pair where it has two plugs. */
export function leaveBy(plan: Plan, socket: string): Plan {
  const to = { into: plan.from.id, socket };
  if (plan.inHand) return placed(plan, plan.inHand, to);
  const before = { ...plan, inHand: undefined };
  const patch = moved(plan, to) ?? likePatch(plan, socket, plan.patch);
  return { ...plan, socket, patch, before };
}

/** Pointing at an input: what is in the hand goes there, or the lead's end. */
export function enterBy(plan: Plan, socket: string): Plan {
  const to = { into: plan.into.id, socket };
  if (plan.inHand) return placed(plan, plan.inHand, to);
  const patch = moved(plan, to);
  return patch === undefined ? plan : { ...plan, patch, before: plan };
}

/** Takes a plug in the hand, or lets it go where it is. */
export const takeInHand = (plan: Plan, end: PlugEnd): Plan => ({
  ...plan,
  inHand: isInHand(plan, end) ? undefined : end,
});

export const isInHand = ({ inHand }: Plan, { part, plug }: PlugEnd): boolean =>
  inHand?.part === part && inHand.plug === plug;

function placed(plan: Plan, end: PlugEnd, to: Place): Plan {
  const patch = exchanged(plan.patch, end, to);
  if (!fitsPatch(plan, patch)) return plan;
  const leaves = patch.plugged.filter(({ into }) => into === plan.from.id);
  const socket = leaves.some((one) => one.socket === plan.socket) ? plan.socket : leaves[0]?.socket;
  return {
    ...plan,
    patch,
    socket: socket ?? plan.socket,
    inHand: undefined,
    before: { ...plan, inHand: undefined },
  };
}

/** The end that stands in a box moved to a socket of it, or both ends to a pair; nothing where they do not fit. */
function moved(plan: Plan, to: Place): Patch | undefined {
  const here = plan.patch.plugged.filter(({ into }) => into === to.into);
  const [one, other] = [...here].sort((a, b) => sideOf(a) - sideOf(b));
  const sockets = to.into === plan.from.id ? outputsOf(plan.from) : inputsOf(plan.into);
  const pair = withPartner(sockets, to.socket);
  const goal = (socket = to.socket): Place => ({ into: to.into, socket });
  if (one === undefined) return undefined;
  if (other === undefined) return fitting(plan, exchanged(plan.patch, one, goal()));
  if (pair.length < 2) return undefined;
  const first = exchanged(plan.patch, one, goal(pair[0]));
  return fitting(plan, exchanged(first, other, goal(pair[1])));
}

const fitting = (plan: Plan, patch: Patch): Patch | undefined =>
  fitsPatch(plan, patch) ? patch : undefined;

const sideOf = ({ plug }: Connection): number => (plug.includes("right") ? 1 : 0);

/** Whether the plug in the hand, or with none there any of the lead's, goes into a socket. */
export function takesIt(plan: Plan, to: Place): boolean {
  const { inHand, patch } = plan;
  if (inHand) return fitsPatch(plan, exchanged(patch, inHand, to));
  return true;
}

/** One plug of a pair left out, so that what comes of it is seen. */
export function leftOut(plan: Plan, end: PlugEnd): Plan {
  const plugged = plan.patch.plugged.filter(
    ({ part, plug }) => part !== end.part || plug !== end.plug,
  );
  return {
    ...plan,
    patch: { ...plan.patch, plugged },
    inHand: undefined,
    before: { ...plan, inHand: undefined },
  };
}

/** Whether another plug stays in the same box when this one is left out. */
export function mayLeaveOut({ patch: { plugged } }: Plan, end: PlugEnd): boolean {
  const own = plugged.find(({ part, plug }) => part === end.part && plug === end.plug);
  return plugged.filter(({ into }) => into === own?.into).length > 1;
}
