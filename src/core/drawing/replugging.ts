import { fits } from "#core/parts/plugs.ts";
import { type BuiltRig, build, type Connection, type Rig } from "#core/rig/rig.ts";
import {
  checked,
  type Edited,
  type PlugEnd,
  plugAt,
  refuse,
  type Spot,
  socketAt,
} from "./edited.ts";
import { hangingIn, partsBy, stepsTo } from "./hanging.ts";

const isEnd =
  ({ part, plug }: PlugEnd) =>
  (one: Connection): boolean =>
    one.part === part && one.plug === plug;

const isIn =
  ({ into, socket }: Spot) =>
  (one: Connection): boolean =>
    one.into === into && one.socket === socket;

/** A plug put into another socket. What stands there goes where the plug was. */
export function replugged(rig: Rig, end: PlugEnd, spot: Spot): Edited {
  const built = build(rig);
  const [plug, socket] = [plugAt(built, end), socketAt(built, spot)];
  if (plug === undefined || socket === undefined)
    return refuse({ refused: "nothing free", part: spot.into });
  if (!fits(plug, socket)) return refuse({ refused: "does not fit", part: end.part, plug, socket });
  const own = rig.plugged.find(isEnd(end));
  const there = rig.plugged.find(isIn(spot));
  if (there !== undefined && there === own) return { rig };
  if (there !== undefined && own === undefined)
    return refuse({ refused: "socket in use", by: there.part, socket: spot.socket });
  const moved: Connection = { ...end, ...spot };
  const others = rig.plugged.map((one) => {
    if (one === own) return moved;
    return one === there && own ? { ...one, into: own.into, socket: own.socket } : one;
  });
  return checked({ ...rig, plugged: own === undefined ? [...others, moved] : others }, rig);
}

/** A plug pulled out and left lying. */
export const unplugged = (rig: Rig, end: PlugEnd): Edited =>
  checked({ ...rig, plugged: rig.plugged.filter((one) => !isEnd(end)(one)) }, rig);

/**
 * The sockets a plug goes into, of the side it is for: what it stands in now says which. None of what hangs on it. An edit may still be
 * refused there: whether a whole rig can be is asked when the plug is let go.
 */
export function spotsFor(rig: BuiltRig, end: PlugEnd): readonly Spot[] {
  const plug = plugAt(rig, end);
  if (plug === undefined) return [];
  const own = rig.plugged.find(isEnd(end));
  const side = own && socketAt(rig, own)?.side;
  const below = own && side !== "in" ? hangingBy(rig, end.part) : [end.part];
  return rig.parts.flatMap(({ id }) =>
    below.includes(id)
      ? []
      : rig
          .part(id)
          .sockets.filter((one) => fits(plug, one) && onSide(one.side, side))
          .map(({ name }): Spot => ({ into: id, socket: name }))
          .filter((spot) => !own || !isIn(spot)(own)),
  );
}

/** A plug in an input stays in inputs; one in an output, or through an adapter, goes to either of these. */
const onSide = (
  side: "in" | "out" | "through",
  now: "in" | "out" | "through" | undefined,
): boolean => now === undefined || (now === "in") === (side === "in");

function hangingBy(rig: BuiltRig, part: string): readonly string[] {
  const last = stepsTo(hangingIn(rig), part).at(-1);
  return last === undefined ? [part] : [part, ...partsBy(last.join)];
}
