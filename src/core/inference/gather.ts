import { type Class, classesOf, packed } from "./classes.ts";
import type { Join, Knot } from "./knot.ts";
import { type Joined, type Rows, rowsOf } from "./rows.ts";

/** The probability of all evidence at and below a knot, given what is above it and how many faults still fit. */
type Evidence = (above: number, room: number) => number;

/** What is kept of one knot while likelihoods go up the tree. */
export interface Gathered {
  readonly classes: readonly Class[];
  readonly rows: Rows;
  readonly below: readonly Gathered[];
  readonly at: Evidence;
  /** The same for one class of the knot, by the behaviour of the whole way down to it. */
  readonly beyond: Evidence;
  /** Nothing was seen at or below it: then its evidence is the same in every context. */
  readonly silent: boolean;
}

/** Likelihoods on their way up the tree, each worked out once. */
export function gatherer(join: Join, joined: Joined): (knot: Knot) => Gathered {
  const knots = new Map<Knot, Gathered>();
  const ends = new Map<Knot["states"], Map<Knot["likelihood"], Gathered>>();
  const of = (knot: Knot): Gathered => {
    const made = knots.get(knot) ?? (knot.below.length > 0 ? gather(knot) : twin(knot));
    knots.set(knot, made);
    return made;
  };
  const gather = (knot: Knot) => gathered(knot, rowsOf(knot, join, joined), knot.below.map(of));
  /** Ends with the same states that saw the same are worked out once. */
  const twin = (knot: Knot): Gathered => {
    const twins = ends.get(knot.states) ?? new Map<Knot["likelihood"], Gathered>();
    ends.set(knot.states, twins);
    const made = twins.get(knot.likelihood) ?? gather(knot);
    twins.set(knot.likelihood, made);
    return made;
  };
  return of;
}

function gathered(
  knot: Knot,
  { rows, sums }: ReturnType<typeof rowsOf>,
  below: readonly Gathered[],
): Gathered {
  const { likelihood, towards } = knot;
  const classes = classesOf(knot.states);
  const silent = likelihood === undefined && below.every((child) => child.silent);
  const memory = new Map<number, number>();
  const at: Evidence = (above, room) => {
    const key = silent ? room : packed(above, room);
    const known = memory.get(key);
    if (known !== undefined) return known;
    const sum = below.length === 0 ? ended(above, room) : passed(above, room);
    memory.set(key, sum);
    return sum;
  };
  const passed: Evidence = (above, room) => {
    const row = rows(above, room);
    let sum = 0;
    for (let index = 0; index < row.length; index++) {
      const { weight, faults } = classes[index] as Class;
      sum += weight * beyond(row[index] as number, room - faults);
    }
    return sum;
  };
  /** At an end it does not matter how many faults would still fit. */
  const ended: Evidence = (above, room) => {
    const { wholes, weights } = sums(above, room);
    let sum = 0;
    for (let index = 0; index < wholes.length; index++)
      sum += (weights[index] as number) * beyond(wholes[index] as number, 0);
    return sum;
  };
  const beyond: Evidence = (whole, room) => {
    let product = likelihood === undefined ? 1 : likelihood(whole);
    for (let child = 0; child < below.length; child++)
      product *= (below[child] as Gathered).at(towards?.(whole, child) ?? whole, room);
    return product;
  };
  return { classes, rows, below, at, beyond, silent };
}
