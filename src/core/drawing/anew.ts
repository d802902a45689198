import { sized } from "#core/parts/sizes.ts";
import { made } from "#core/patching/sockets-of.ts";
import { build, type Connection, type Rig, type RigPart } from "#core/rig/rig.ts";
import { plugAt, without } from "./edited.ts";
import { hangingIn, type Join, stepsTo } from "./hanging.ts";
import { type Called, outward, pluggedIn, put } from "./putting.ts";

/**
 * A box where one of its name was, by a plug of its own or by the plainest lead, with as many sockets as it takes, and on it in their order
 * all that hung on the one before. Nothing where that cannot be.
 */
export function hungAnew(rig: Rig, box: RigPart, called: Called): Rig | undefined {
  const join = stepsTo(hangingIn(build(rig)), box.id).at(-1)?.join;
  const ends = join === undefined ? [] : hangingOn(join, box);
  const [first] = ends;
  const [near] = join?.near ?? [];
  if (near === undefined || first === undefined) return undefined;
  const bare = without(rig, [box.id, ...(join?.leads ?? [])]);
  const spot = { into: near.into, socket: near.socket };
  const carried = plugAt(build(rig), first);
  for (const one of sized(box, ends.length)) {
    if (outward(made(one)).length < ends.length) continue;
    const next = allOn(put(bare, one, spot, called, carried), box.id, ends);
    if (next !== undefined) return next;
  }
  return undefined;
}

/** The plugs in the sockets of a box; none where it hangs by two sockets and would by one, or stands in what it feeds by a plug of its own. */
function hangingOn({ near, twig }: Join, box: RigPart): readonly Connection[] {
  if (twig?.part !== box.id || (near.length > 1 && made(box).plugs.length > 0)) return [];
  return twig.joins.every((join) => join.near.length > 0)
    ? twig.joins.flatMap((join) => join.near)
    : [];
}

/** Plugs in the free sockets of a box, each in the first that it goes into; nothing where one finds none. */
function allOn(rig: Rig | undefined, box: string, ends: readonly Connection[]): Rig | undefined {
  let next = rig;
  for (const end of ends) {
    const used = next?.plugged.filter(({ into }) => into === box).map(({ socket }) => socket) ?? [];
    const sockets = next === undefined ? [] : outward(build(next).part(box));
    const free = sockets.filter(({ name }) => !used.includes(name));
    next = next && pluggedIn(next, end, box, free);
  }
  return next;
}
