import { type Class, classesOf, packed } from "./classes.ts";
import type { Join, Knot } from "./knot.ts";
import { type Joined, type Rows, rowsOf } from "./rows.ts";

/** The probability of all evidence at and below a knot, given what is above it and how many faults still fit. */
type Evidence = (above: number, room: number) => number;

/** What is kept of one knot while likelihoods go up the tree. */
export interface Gathered {
  readonly classes: readonly Class[];
  readonly rows: Rows;
  readonly at: Evidence;
  /** The same for one class of the knot, by the behaviour of the whole way down to it. */
  readonly beyond: Evidence;
  /** Nothing was seen at or below it: then its evidence is the same in every context. */
  readonly silent: boolean;
}

/** Likelihoods on their way up the tree, each worked out once. */
export function gatherer(join: Join, joined: Joined): (knot: Knot) => Gathered {
  const knots = new Map<Knot, Gathered>();
  const of = (knot: Knot): Gathered => {
    const rows = rowsOf(knot, join, joined);
    const made =
      knots.get(knot) ?? (knot.below.length > 0 ? inner(knot, rows, of) : end(knot, rows));
    knots.set(knot, made);
    return made;
  };
  return of;
}

type Likelihood = NonNullable<Knot["likelihood"]>;

const unseen: Likelihood = () => 1;
const ends = new WeakMap<Rows, WeakMap<Likelihood, Gathered>>();

/** Ends with the same states that saw the same are worked out once, and kept from one question to the next. */
function end({ states, likelihood = unseen }: Knot, rows: Rows): Gathered {
  const twins = ends.get(rows) ?? new WeakMap<Likelihood, Gathered>();
  ends.set(rows, twins);
  const known = twins.get(likelihood);
  if (known !== undefined) return known;
  const silent = likelihood === unseen;
  /** Here it does not matter how many faults would still fit. */
  const at: Evidence = (above, room) => {
    const { wholes, weights } = rows.sums(above, room);
    let sum = 0;
    for (let index = 0; index < wholes.length; index++)
      sum += (weights[index] as number) * likelihood(wholes[index] as number);
    return sum;
  };
  const classes = classesOf(states);
  const made = { classes, rows, silent, at: kept(at, silent), beyond: likelihood };
  twins.set(likelihood, made);
  return made;
}

function inner(knot: Knot, rows: Rows, of: (knot: Knot) => Gathered): Gathered {
  const below = knot.below.map(of);
  const { likelihood = unseen } = knot;
  const silent = likelihood === unseen && below.every((one) => one.silent);
  const further = evidenceBelow(knot, below);
  const classes = classesOf(knot.states);
  const beyond: Evidence = (whole, room) => likelihood(whole) * further(whole, room);
  const at: Evidence = (above, room) => {
    const row = rows.row(above, room);
    let sum = 0;
    for (let index = 0; index < row.length; index++) {
      const { weight, faults } = classes[index] as Class;
      sum += weight * beyond(row[index] as number, room - faults);
    }
    return sum;
  };
  return { classes, rows, silent, at: kept(at, silent), beyond };
}

/** The evidence of all that hangs from a knot. What is handed to all alike is asked once of those that saw the same. */
function evidenceBelow({ towards }: Knot, below: readonly Gathered[]): Evidence {
  if (towards !== undefined)
    return (whole, room) =>
      below.reduce((product, one, child) => product * one.at(towards(whole, child), room), 1);
  const counts = new Map<Gathered, number>();
  for (const one of below) counts.set(one, (counts.get(one) ?? 0) + 1);
  const distinct = [...counts];
  return (whole, room) => {
    let product = 1;
    for (const [one, count] of distinct) product *= one.at(whole, room) ** count;
    return product;
  };
}

/** Each answer worked out once; where nothing was seen it is the same whatever is above. */
function kept(work: Evidence, silent: boolean): Evidence {
  const memory = new Map<number, number>();
  return (above, room) => {
    const key = silent ? room : packed(above, room);
    const known = memory.get(key);
    if (known !== undefined) return known;
    const made = work(above, room);
    memory.set(key, made);
    return made;
  };
}
