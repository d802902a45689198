import type { Class } from "./classes.ts";
import type { Gathered } from "./gather.ts";
import type { Knot } from "./knot.ts";

/** One state of every knot from the root to an end, what the whole way does, and how likely that is. */
export interface Path {
  /** The places of the states in their knots' lists, the root's first. */
  readonly states: readonly number[];
  readonly behaviour: number;
  readonly probability: number;
}

/** A knot on a path with what was gathered of it, and which of its parent's children it is. */
export interface Stop {
  readonly knot: Knot;
  readonly gathered: Gathered;
  readonly child: number;
}

/** Every path down some stops that is likelier than `least`, exactly: what is above decides what is below. */
export function pathsDown(
  stops: readonly Stop[],
  start: number,
  limit: number,
  least: number,
): readonly Path[] {
  const found: Path[] = [];
  const go = (depth: number, from: Place): void => {
    if (depth === stops.length) emit(found, stops, from, least);
    else for (const next of onwards(stops, depth, from, least)) go(depth + 1, next);
  };
  go(0, { above: start, room: limit, classes: [], mass: 1 });
  return found.sort((a, b) => b.probability - a.probability);
}

/** So far down a path: what stands above, how many faults still fit, and the class of every knot passed. */
interface Place {
  readonly above: number;
  readonly room: number;
  readonly classes: readonly Class[];
  readonly mass: number;
}

/** Every class of the next knot that is likely enough. */
function onwards(
  stops: readonly Stop[],
  depth: number,
  { above, room, classes, mass }: Place,
  least: number,
): readonly Place[] {
  const { knot, gathered } = stops[depth] as Stop;
  const child = stops[depth + 1]?.child;
  const total = gathered.at(above, room);
  const places: Place[] = [];
  if (total === 0) return places;
  for (const [index, whole] of gathered.rows.row(above, room).entries()) {
    const one = gathered.classes[index] as Class;
    const left = room - one.faults;
    const probability = (mass * one.weight * gathered.beyond(whole, left)) / total;
    if (probability < least) continue;
    const down = child === undefined ? whole : (knot.towards?.(whole, child) ?? whole);
    places.push({ above: down, room: left, classes: [...classes, one], mass: probability });
  }
  return places;
}

/** The members of the classes along a path, each by its share. */
function emit(
  found: Path[],
  stops: readonly Stop[],
  { classes, mass, above }: Place,
  least: number,
): void {
  let paths: readonly Omit<Path, "behaviour">[] = [{ states: [], probability: mass }];
  for (const [depth, { members, weight }] of classes.entries()) {
    const states = stops[depth]?.knot.states ?? [];
    const shareOf = (at: number) => (states[at]?.weight ?? 0) / weight;
    paths = paths.flatMap(({ states: before, probability }) =>
      members
        .map((at) => ({ states: [...before, at], probability: probability * shareOf(at) }))
        .filter((path) => path.probability >= least),
    );
  }
  for (const path of paths) found.push({ ...path, behaviour: above });
}
