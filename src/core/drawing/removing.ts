import { build, type Rig } from "#core/rig/rig.ts";
import { checked, type Edited, refuse, socketAt, without } from "./edited.ts";
import { type Hanging, hangingIn, isLead, partsBy, type Step, stepsTo } from "./hanging.ts";
import { pluggedIn } from "./putting.ts";

/** A position with all that is its own. */
export function positionRemoved(rig: Rig, position: string): Edited {
  const wears = rig.positions.find(({ id }) => id === position)?.wears;
  return wears === undefined ? { rig } : removedFrom(rig, ownOf(rig, wears));
}

/** What is worn, and what serves nobody else: its lead, its adapter, the pack on its belt. */
export function ownOf(rig: Rig, wears: string): readonly string[] {
  const steps = stepsTo(hangingIn(build(rig)), wears);
  const own: string[] = [wears];
  for (const { on, join } of [...steps].reverse()) {
    own.push(...join.leads);
    if (on === steps[0]?.on || on.joins.length > 1 || serves(rig, on.part)) break;
    own.push(on.part);
  }
  return own;
}

/** A box that has room for others is not one listener's own. */
const serves = (rig: Rig, part: string): boolean => {
  const { sockets } = build(rig).part(part);
  return sockets.filter(({ side }) => side !== "in").length > 1;
};

function removedFrom(rig: Rig, gone: readonly string[]): Edited {
  const next = without(rig, gone);
  return next.positions.length === 0 ? refuse({ refused: "last position" }) : checked(next, rig);
}

/**
 * A part taken out. What hung on it is plugged in where it was, where there is room; else all that hangs on it goes along. A source that a
 * box stood behind leaves that box as the source.
 */
export function partRemoved(rig: Rig, id: string): Edited {
  const position = rig.positions.find(({ wears }) => wears === id);
  if (position !== undefined) return positionRemoved(rig, position.id);
  const hanging = hangingIn(build(rig));
  const [way, ...others] = waysOut(rig, hanging, id);
  if (way === undefined) return removedFrom(rig, [id]);
  const all = [way, ...others];
  return all.find((edited) => "rig" in edited) ?? all.at(-1) ?? way;
}

function waysOut(rig: Rig, hanging: Hanging, id: string): readonly Edited[] {
  const step = stepsTo(hanging, id).at(-1);
  const root = hanging.roots.find(({ part }) => part === id);
  if (step === undefined && root === undefined) return [removedFrom(rig, [id])];
  if (step === undefined) {
    const leads = root?.joins.flatMap((join) => join.leads) ?? [];
    const all = [id, ...(root?.joins.flatMap(partsBy) ?? [])];
    return [removedFrom(rig, [id, ...leads]), removedFrom(rig, all)];
  }
  const whole = removedFrom(rig, [id, ...partsBy(step.join)]);
  return isLead(build(rig), id) ? [removedFrom(rig, [id]), whole] : [bridged(rig, step, id), whole];
}

/** What hangs on a part by one plug, in the socket that the part hung on. */
function bridged(rig: Rig, { join }: Step, id: string): Edited {
  const below = join.twig?.joins ?? [];
  const [near] = join.near;
  const [end] = below[0]?.near ?? [];
  const alone = below.length === 1 && join.near.length === 1 && below[0]?.near.length === 1;
  if (!alone || near === undefined || end === undefined)
    return refuse({ refused: "nothing free", part: id });
  const bare = without(rig, [id, ...join.leads]);
  const socket = socketAt(build(bare), near);
  const next = socket && pluggedIn(bare, end, near.into, [socket]);
  return next === undefined
    ? refuse({ refused: "nothing free", part: near.into })
    : checked(next, rig);
}
