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
  const go = (
    depth: number,
    above: number,
    room: number,
    before: readonly Class[],
    mass: number,
  ) => {
    const stop = stops[depth];
    if (stop === undefined) {
      emit(found, stops, before, above, mass, least);
      return;
    }
    const { gathered } = stop;
    const total = gathered.at(above, room);
    if (total === 0) return;
    const row = gathered.rows(above, room);
    for (let index = 0; index < row.length; index++) {
      const one = gathered.classes[index] as Class;
      const whole = row[index] as number;
      const left = room - one.faults;
      const probability = (mass * one.weight * gathered.beyond(whole, left)) / total;
      if (probability < least) continue;
      const next = stops[depth + 1];
      const down = next === undefined ? whole : (stop.knot.towards?.(whole, next.child) ?? whole);
      go(depth + 1, down, left, [...before, one], probability);
    }
  };
  go(0, start, limit, [], 1);
  return found.sort((a, b) => b.probability - a.probability);
}

/** The members of the classes along a path, each by its share. */
function emit(
  found: Path[],
  stops: readonly Stop[],
  classes: readonly Class[],
  behaviour: number,
  mass: number,
  least: number,
): void {
  let paths: readonly { states: readonly number[]; probability: number }[] = [
    { states: [], probability: mass },
  ];
  for (const [depth, { members, weight }] of classes.entries()) {
    const states = stops[depth]?.knot.states ?? [];
    paths = paths.flatMap(({ states: before, probability }) =>
      members.flatMap((at) => {
        const share = (probability * (states[at]?.weight ?? 0)) / weight;
        return share < least ? [] : [{ states: [...before, at], probability: share }];
      }),
    );
  }
  for (const path of paths) found.push({ ...path, behaviour });
}
