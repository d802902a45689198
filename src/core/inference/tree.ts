import { gatherer } from "./gather.ts";
import type { Join, Knot } from "./knot.ts";
import { type Path, pathsDown, type Stop } from "./paths.ts";
import type { Joined } from "./rows.ts";
import { type Spread, spread, type Way } from "./spread.ts";

/** The posterior, worked out knot by knot as it is asked for. */
export interface Belief {
  /** One probability for each state of a knot, in the knot's order. */
  readonly states: (knot: Knot) => Float64Array;
  /** The behaviours of the whole way to a knot with nothing below it. */
  readonly ways: (knot: Knot) => readonly Way[];
  /** The states on the way to a knot with nothing below it, together, where that is likelier than `least`; the likeliest first. */
  readonly paths: (knot: Knot, least: number) => readonly Path[];
}

/**
 * The exact posterior of every state, with at most `limit` faults (three or fewer) on the way to any end of the tree and any number
 * in all: likelihoods go up the tree once, probabilities come down once.
 */
export function believe(
  root: Knot,
  start: number,
  join: Join,
  limit: number,
  joined: Joined = new WeakMap(),
): Belief {
  const gathered = gatherer(join, joined);
  const above = new Map<Knot, Knot>();
  const enter = (knot: Knot) => {
    for (const child of knot.below) {
      above.set(child, knot);
      enter(child);
    }
  };
  enter(root);
  const spreads = new Map<Knot, Spread>();
  const spreadOf = (knot: Knot): Spread => {
    const known = spreads.get(knot);
    if (known !== undefined) return known;
    const parent = above.get(knot);
    const contexts =
      parent === undefined
        ? [{ above: start, room: limit, mass: 1 }]
        : spreadOf(parent).contexts(parent.below.indexOf(knot));
    const made = spread(knot, contexts, gathered(knot));
    spreads.set(knot, made);
    return made;
  };
  const stopsTo = (knot: Knot): readonly Stop[] => {
    const parent = above.get(knot);
    const child = parent?.below.indexOf(knot) ?? 0;
    const before = parent === undefined ? [] : stopsTo(parent);
    return [...before, { knot, gathered: gathered(knot), child }];
  };
  return {
    states: (knot) => spreadOf(knot).states,
    ways: (knot) => spreadOf(knot).ways,
    paths: (knot, least) => pathsDown(stopsTo(knot), start, limit, least),
  };
}
