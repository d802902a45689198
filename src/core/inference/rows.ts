import { type Class, classesOf, packed } from "./classes.ts";
import type { Join, Knot, State } from "./knot.ts";

/** The rows of every list of states that was met, kept from one question to the next. One memory serves one `Join`. */
export type Joined = WeakMap<readonly State[], Map<Knot["standFor"], Rows>>;

/** What joining the states of a knot to each behaviour above it makes, each row worked out once. */
export interface Rows {
  /** The behaviours of the whole way, one for each class of the knot that fits the room: those with fewest faults first. */
  readonly row: (above: number, room: number) => Int32Array;
  /** The same, each behaviour once. */
  readonly sums: (above: number, room: number) => Sums;
}

/** The behaviours of a row, each once, with the weights of all classes that have it. */
interface Sums {
  readonly wholes: Int32Array;
  readonly weights: Float64Array;
}

/** The rows of a knot; knots of the same states have the same ones. */
export function rowsOf({ states, standFor }: Knot, join: Join, joined: Joined): Rows {
  const byStand = joined.get(states) ?? new Map<Knot["standFor"], Rows>();
  joined.set(states, byStand);
  const made = byStand.get(standFor) ?? rowsFor(states, join, standFor ?? ((whole) => whole));
  byStand.set(standFor, made);
  return made;
}

function rowsFor(states: readonly State[], join: Join, stand: NonNullable<Knot["standFor"]>): Rows {
  const classes = classesOf(states);
  const rows = new Map<number, Int32Array>();
  const row = (above: number, room: number): Int32Array => {
    const key = packed(above, room);
    const known = rows.get(key);
    if (known !== undefined) return known;
    const made = new Int32Array(fitting(classes, room));
    for (let at = 0; at < made.length; at++)
      made[at] = stand(join(above, (classes[at] as Class).behaviour));
    rows.set(key, made);
    return made;
  };
  const sums = new Map<number, Sums>();
  return {
    row,
    sums: (above, room) => {
      const key = packed(above, room);
      const known = sums.get(key) ?? summed(row(above, room), classes);
      sums.set(key, known);
      return known;
    },
  };
}

/** How many classes fit a room: they are those with fewest faults, and those come first. */
function fitting(classes: readonly Class[], room: number): number {
  const first = classes.findIndex(({ faults }) => faults > room);
  return first < 0 ? classes.length : first;
}

function summed(row: Int32Array, classes: readonly Class[]): Sums {
  const weights = new Map<number, number>();
  for (const [index, whole] of row.entries())
    weights.set(whole, (weights.get(whole) ?? 0) + (classes[index]?.weight ?? 0));
  return {
    wholes: Int32Array.from(weights.keys()),
    weights: Float64Array.from(weights.values()),
  };
}
