import { type Class, classesOf, packed } from "./classes.ts";
import type { Join, Knot, State } from "./knot.ts";

/**
 * What joining the states of a knot to each behaviour above it makes, kept from one question to the next: for each class in order,
 * those with fewest faults first. One memory serves one `Join`.
 */
export type Joined = WeakMap<readonly State[], Map<Knot["standFor"], Memory>>;

/** What is kept of one list of states: its rows, and their sums. */
interface Memory {
  readonly rows: Map<number, Int32Array>;
  readonly sums: Map<number, Sums>;
}

/** The behaviours of a row, each once, with the weights of all classes that have it. */
export interface Sums {
  readonly wholes: Int32Array;
  readonly weights: Float64Array;
}

/** The behaviours of the whole way, one for each class of a knot that fits the room, given what is above. */
export type Rows = (above: number, room: number) => Int32Array;

/** Reads the rows of a knot and their sums, each made once. */
export function rowsOf(
  { states, standFor }: Knot,
  join: Join,
  joined: Joined,
): { readonly rows: Rows; readonly sums: (above: number, room: number) => Sums } {
  const byStand = joined.get(states) ?? new Map<Knot["standFor"], Memory>();
  joined.set(states, byStand);
  const memory = byStand.get(standFor) ?? { rows: new Map(), sums: new Map() };
  byStand.set(standFor, memory);
  const stand = standFor ?? ((whole: number) => whole);
  const rows: Rows = (above, room) => {
    const key = packed(above, room);
    const known = memory.rows.get(key);
    if (known !== undefined) return known;
    const fitting = classesOf(states).filter(({ faults }) => faults <= room);
    const made = Int32Array.from(fitting, ({ behaviour }) => stand(join(above, behaviour)));
    memory.rows.set(key, made);
    return made;
  };
  return {
    rows,
    sums: (above, room) => {
      const key = packed(above, room);
      const known = memory.sums.get(key) ?? summed(rows(above, room), classesOf(states));
      memory.sums.set(key, known);
      return known;
    },
  };
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
