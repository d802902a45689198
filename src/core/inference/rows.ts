import { classesOf, packed } from "./classes.ts";
import type { Join, Knot, State } from "./knot.ts";

/**
 * What joining the states of a knot to each behaviour above it makes, kept from one question to the next: for each class in order,
 * those with fewest faults first. One memory serves one `Join`.
 */
export type Joined = WeakMap<readonly State[], Map<Knot["standFor"], Map<number, Int32Array>>>;

/** The behaviours of the whole way, one for each class of a knot that fits the room, given what is above. */
export type Rows = (above: number, room: number) => Int32Array;

/** Reads the rows of a knot, each made once. */
export function rowsOf({ states, standFor }: Knot, join: Join, joined: Joined): Rows {
  const byStand = joined.get(states) ?? new Map<Knot["standFor"], Map<number, Int32Array>>();
  joined.set(states, byStand);
  const memory = byStand.get(standFor) ?? new Map<number, Int32Array>();
  byStand.set(standFor, memory);
  const stand = standFor ?? ((whole: number) => whole);
  return (above, room) => {
    const key = packed(above, room);
    const known = memory.get(key);
    if (known !== undefined) return known;
    const fitting = classesOf(states).filter(({ faults }) => faults <= room);
    const made = Int32Array.from(fitting, ({ behaviour }) => stand(join(above, behaviour)));
    memory.set(key, made);
    return made;
  };
}
