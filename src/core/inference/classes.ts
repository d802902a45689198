import type { State } from "./knot.ts";

/** States of a knot that count and behave alike. */
export interface Class {
  readonly faults: number;
  readonly behaviour: number;
  readonly members: number[];
  weight: number;
}

/** A fault count and a behaviour in one number: at most three faults fit. */
export const packed = (behaviour: number, faults: number): number => behaviour * 4 + faults;

const classes = new WeakMap<readonly State[], readonly Class[]>();

/** The classes of a list of states, remembered by its identity. */
export function classesOf(states: readonly State[]): readonly Class[] {
  const known = classes.get(states);
  if (known !== undefined) return known;
  const found = new Map<number, Class>();
  for (const [index, { faults, behaviour, weight }] of states.entries()) {
    const key = packed(behaviour, faults);
    const one = found.get(key) ?? { faults, behaviour, members: [], weight: 0 };
    found.set(key, one);
    one.members.push(index);
    one.weight += weight;
  }
  const made = [...found.values()].sort((a, b) => a.faults - b.faults);
  classes.set(states, made);
  return made;
}
