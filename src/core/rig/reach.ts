import type { BuiltRig, Connection } from "./rig.ts";

/** What is joined by wires alone between the boxes that drive it and those that take from it. */
export interface Reach {
  /** The part whose outputs drive it. */
  readonly from: string;
  /** Leads, adapters and splitters, those nearest to the source first. */
  readonly wires: readonly string[];
  /** What takes from it: headphones and the inputs of boxes, in the order of the rig. */
  readonly takers: readonly string[];
  /** Every plug in a socket of it. */
  readonly ends: readonly Connection[];
}

/** A part that is nothing but wires. */
const isWire = (rig: BuiltRig, id: string): boolean => {
  const { through, takes } = rig.part(id);
  return through === undefined && takes.length === 0;
};

/** The two parts a plug joins. */
const joins = ({ part, into }: Connection): readonly string[] => [part, into];

/** What a part is fed by: its own plugs, as headphones have, or what stands in its inputs. */
const feeding = (rig: BuiltRig, id: string): readonly Connection[] => {
  const inputs = rig
    .part(id)
    .sockets.filter(({ side }) => side === "in")
    .map(({ name }) => name);
  return rig.plugged.filter(
    ({ part, into, socket }) => part === id || (into === id && inputs.includes(socket)),
  );
};

/** Everything is fed but what the programme comes in by: a box with nothing in its inputs. */
export const isFed = (rig: BuiltRig, part: string): boolean => feeding(rig, part).length > 0;

const known = new WeakMap<BuiltRig, Map<string, Reach>>();

/**
 * The stretch of wires that feeds a part, with everything else that hangs on it. Throws where two boxes drive it, or none: a programme comes
 * from one place.
 */
export function reachInto(rig: BuiltRig, part: string): Reach {
  const reaches = known.get(rig) ?? new Map<string, Reach>();
  known.set(rig, reaches);
  const reach = reaches.get(part) ?? spanned(rig, part);
  reaches.set(part, reach);
  return reach;
}

function spanned(rig: BuiltRig, part: string): Reach {
  const ends = endsFrom(rig, part);
  const met = [...new Set(ends.flatMap(joins))];
  const boxes = met.filter((id) => !isWire(rig, id));
  const from = boxes.filter((id) => ends.some((end) => sends(rig, end, id)));
  const [source] = from;
  if (source === undefined || from.length > 1)
    throw new Error(`${part} is fed by ${from.length} parts, and must be by one`);
  const order = rig.parts.map(({ id }) => id);
  return {
    from: source,
    wires: nearestFirst(rig, ends, source),
    takers: boxes
      .filter((id) => ends.some((end) => takes(rig, end, id)))
      .sort((a, b) => order.indexOf(a) - order.indexOf(b)),
    ends,
  };
}

/** All plugs that wires join to what feeds a part. */
function endsFrom(rig: BuiltRig, part: string): readonly Connection[] {
  const wires = wiresAmong(rig, feeding(rig, part));
  for (let before = -1; before < wires.size; ) {
    before = wires.size;
    const met = rig.plugged.filter((end) => joins(end).some((id) => wires.has(id)));
    for (const id of wiresAmong(rig, met)) wires.add(id);
  }
  const ends = new Set(feeding(rig, part));
  return rig.plugged.filter((end) => ends.has(end) || joins(end).some((id) => wires.has(id)));
}

const wiresAmong = (rig: BuiltRig, ends: readonly Connection[]): Set<string> =>
  new Set(ends.flatMap(joins).filter((id) => isWire(rig, id)));

const sends = (rig: BuiltRig, { into, socket }: Connection, id: string): boolean =>
  into === id && rig.part(id).sockets.some(({ name, side }) => name === socket && side === "out");

const takes = (rig: BuiltRig, { part, into, socket }: Connection, id: string): boolean =>
  part === id ||
  (into === id && rig.part(id).sockets.some(({ name, side }) => name === socket && side === "in"));

function nearestFirst(
  rig: BuiltRig,
  ends: readonly Connection[],
  source: string,
): readonly string[] {
  const order: string[] = [source];
  for (const at of order) {
    const beside = wiresAmong(
      rig,
      ends.filter((end) => joins(end).includes(at)),
    );
    order.push(...[...beside].filter((id) => !order.includes(id)));
  }
  return order.slice(1);
}

/** The wires on the ways from the source to one taker, nearest to the source first; those that only hang beside are left out. */
export function wiresBetween(rig: BuiltRig, taker: string): readonly string[] {
  const { from, ends, wires } = reachInto(rig, taker);
  const on = new Set<string>();
  const beside = (at: string) => ends.filter((end) => joins(end).includes(at)).flatMap(joins);
  const walk = (past: readonly string[]): void => {
    const next = beside(past.at(-1) ?? from);
    if (next.includes(taker)) for (const id of past) on.add(id);
    const onwards = wires.filter((id) => next.includes(id) && !past.includes(id));
    for (const id of onwards) walk([...past, id]);
  };
  walk([]);
  return wires.filter((id) => on.has(id));
}
