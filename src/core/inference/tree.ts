import { type Gathered, gatherer } from "./gather.ts";
import type { Join, Knot } from "./knot.ts";
import { type Path, pathsDown, type Stop } from "./paths.ts";
import type { Joined } from "./rows.ts";
import { type Context, type Spread, spread, type Way } from "./spread.ts";

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
  const fromTop = [{ above: start, room: limit, mass: 1 }];
  const spreads = new Map<Gathered, Map<readonly Context[], Spread>>();
  /** Ends that saw the same and hang from the same share one. */
  const spreadOf = (knot: Knot): Spread => {
    const parent = above.get(knot);
    const contexts =
      parent === undefined ? fromTop : spreadOf(parent).contexts(parent.below.indexOf(knot));
    const own = gathered(knot);
    const known = spreads.get(own) ?? new Map<readonly Context[], Spread>();
    spreads.set(own, known);
    const found = known.get(contexts) ?? spread(knot, contexts, own);
    known.set(contexts, found);
    return found;
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
