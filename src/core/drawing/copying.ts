import { fits } from "#core/parts/plugs.ts";
import { countedIn } from "#core/parts/sizes.ts";
import { build, type Connection, type Rig } from "#core/rig/rig.ts";
import { checked, type Edited, type Grown, plugAt, refuse, type Spot } from "./edited.ts";
import { hangingIn, type Step, stepsTo } from "./hanging.ts";
import { nextName, nextPosition } from "./names.ts";

/**
 * A position once more: with its headphones and all that is its own, in the next free socket of the same kind. A box that comes with more
 * outputs than it was drawn with gets one more, which is told.
 */
export function positionCopied(rig: Rig, position: string): Edited {
  const seat = rig.positions.find(({ id }) => id === position);
  if (seat === undefined) return { rig };
  const steps = [...stepsTo(hangingIn(build(rig)), seat.wears)].reverse();
  const own: string[] = [seat.wears];
  for (const step of steps) {
    own.push(...step.join.leads);
    const room = withRoom(rig, step);
    if (room !== undefined) {
      const copy = copied(room.rig, own, step, room.spots);
      const wears = copy.names.get(seat.wears) ?? seat.wears;
      const next = nextPosition(copy.rig, wears, seat);
      const at = rig.positions.indexOf(seat) + 1;
      const positions = copy.rig.positions.toSpliced(at, 0, next);
      return { ...checked({ ...copy.rig, positions }, rig), grown: room.grown };
    }
    own.push(step.on.part);
  }
  return refuse({ refused: "nothing free", part: steps.at(-1)?.on.part ?? seat.wears });
}

interface Room {
  readonly rig: Rig;
  readonly spots: readonly Spot[];
  /** The box that needed one output more for them. */
  readonly grown?: Grown;
}

/** A rig with as many free sockets as a way down takes, like those it takes now. */
function withRoom(rig: Rig, { on, join }: Step): Room | undefined {
  const now = freeLike(rig, on.part, join.near);
  if (now !== undefined) return { rig, spots: now };
  const grown = withOneMore(rig, on.part);
  const spots = grown && freeLike(grown.rig, on.part, join.near);
  return grown && spots && { ...grown, spots };
}

/** 'Output 2' is like 'output 1'; 'send' is not. */
const row = (socket: string): string => socket.replace(/\d+/, "#");

function freeLike(rig: Rig, box: string, ends: readonly Connection[]): readonly Spot[] | undefined {
  const built = build(rig);
  const used = new Set(rig.plugged.flatMap(({ into, socket }) => (into === box ? [socket] : [])));
  const spots: Spot[] = [];
  for (const end of ends) {
    const plug = plugAt(built, end);
    const socket = built
      .part(box)
      .sockets.find(
        (one) =>
          !used.has(one.name) &&
          row(one.name) === row(end.socket) &&
          plug !== undefined &&
          fits(plug, one),
      );
    if (socket === undefined) return undefined;
    used.add(socket.name);
    spots.push({ into: box, socket: socket.name });
  }
  return spots;
}

/** A box with one output more, where its kind comes with so many. */
function withOneMore(rig: Rig, id: string): Required<Omit<Room, "spots">> | undefined {
  const part = rig.parts.find((one) => one.id === id);
  const counted = part && countedIn(part);
  if (part === undefined || counted === undefined || counted.count >= counted.most)
    return undefined;
  const count = counted.count + 1;
  const settings = { ...part.settings, [counted.name]: count };
  const parts = rig.parts.map((one) => (one === part ? { ...part, settings } : one));
  return { rig: { ...rig, parts }, grown: { part: id, setting: counted.name, count } };
}

/** Some parts once more, joined to one another as they are, and to the rest by the sockets given. */
function copied(rig: Rig, own: readonly string[], { join }: Step, spots: readonly Spot[]) {
  let next = rig;
  const names = new Map<string, string>();
  for (const part of rig.parts.filter(({ id }) => own.includes(id))) {
    const { first: _, controls: __, ...same } = part;
    const id = nextName(next, part.id);
    names.set(part.id, id);
    next = { ...next, parts: [...next.parts, { ...same, id }] };
  }
  const plugged = rig.plugged.flatMap((end): Connection[] => {
    const part = names.get(end.part);
    if (part === undefined) return [];
    const spot = spots[join.near.indexOf(end)];
    const into = names.get(end.into);
    if (spot !== undefined) return [{ part, plug: end.plug, ...spot }];
    return into === undefined ? [] : [{ part, plug: end.plug, into, socket: end.socket }];
  });
  return { rig: { ...next, plugged: [...next.plugged, ...plugged] }, names };
}
