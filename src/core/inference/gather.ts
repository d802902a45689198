import { type Class, classesOf, packed } from "./classes.ts";
import type { Knot } from "./knot.ts";
import type { Rows } from "./rows.ts";

/** The probability of all evidence at and below a knot, given its context. */
export interface Gatherer {
  readonly at: (knot: Knot, above: number, room: number) => number;
  /** The same for one class of the knot, by the behaviour of the whole way down to it. */
  readonly beyond: (knot: Knot, whole: number, room: number) => number;
}

/** What is kept of one knot while evidence is gathered. */
interface Gathered {
  readonly memory: Map<number, number>;
  readonly classes: readonly Class[];
  /** Nothing was seen at or below it: then its evidence is the same in every context. */
  readonly silent: boolean;
}

/** Likelihoods on their way up the tree; each is worked out once. */
export function gatherer(rows: Rows): Gatherer {
  const knots = new Map<Knot, Gathered>();
  const gatheredOf = (knot: Knot): Gathered => {
    const known = knots.get(knot);
    if (known !== undefined) return known;
    const silent =
      knot.likelihood === undefined && knot.below.every((child) => gatheredOf(child).silent);
    const made = { memory: new Map<number, number>(), classes: classesOf(knot.states), silent };
    knots.set(knot, made);
    return made;
  };
  const at = (knot: Knot, above: number, room: number): number => {
    const { memory, classes, silent } = gatheredOf(knot);
    const key = silent ? room : packed(above, room);
    const known = memory.get(key);
    if (known !== undefined) return known;
    const row = rows(knot, above, room);
    let sum = 0;
    for (let index = 0; index < row.length; index++) {
      const { weight, faults } = classes[index] as Class;
      sum += weight * beyond(knot, row[index] as number, room - faults);
    }
    memory.set(key, sum);
    return sum;
  };
  const beyond = (knot: Knot, whole: number, room: number): number => {
    let product = knot.likelihood === undefined ? 1 : knot.likelihood(whole);
    for (const child of knot.below) product *= at(child, whole, room);
    return product;
  };
  return { at, beyond };
}
