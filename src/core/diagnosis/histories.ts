import type { Way } from "#core/inference/spread.ts";
import type { Pool } from "./pool.ts";

/**
 * Behaviours over time, as numbers: what a stretch did before the first move, after it, and so on. Findings from before a move
 * speak of the rig as it was then.
 */
export interface Histories {
  /** The number of a history, from the behaviour in each epoch. */
  readonly of: (behaviour: (epoch: number) => number) => number;
  /** The behaviour in one epoch. */
  readonly at: (history: number, epoch: number) => number;
  readonly join: (first: number, then: number) => number;
  readonly straight: number;
  /** What goes to one of several things that hang on one circuit. */
  readonly towards: (history: number, branch: number) => number;
  /** A way with its behaviours as they are now. */
  readonly now: (way: Way) => Way;
}

/** Where the paths through behaviours part; an end bears the number of its history. */
type Branching = Map<number, Branching> & { number?: number };

export function createHistories(pool: Pool, epochs: number): Histories {
  if (epochs === 1)
    return {
      of: (behaviour) => behaviour(0),
      at: (history) => history,
      join: (first, then) => pool.join(first, then),
      straight: pool.straight,
      towards: (history, branch) => pool.towards(history, branch),
      now: (way) => way,
    };
  const root: Branching = new Map();
  const all: (readonly number[])[] = [];
  /** The number of a list of behaviours, by a path through maps: a second list that is the same ends where the first did. */
  const number = (behaviours: readonly number[]): number => {
    let place = root;
    for (const behaviour of behaviours) {
      const next = place.get(behaviour) ?? (new Map() as Branching);
      place.set(behaviour, next);
      place = next;
    }
    place.number ??= all.push(behaviours) - 1;
    return place.number;
  };
  const at = (history: number, epoch: number): number => {
    const behaviour = all[history]?.[epoch];
    if (behaviour === undefined) throw new Error(`no history ${history} at epoch ${epoch}`);
    return behaviour;
  };
  const of = (behaviour: (epoch: number) => number) =>
    number(Array.from({ length: epochs }, (_, epoch) => behaviour(epoch)));
  return {
    of,
    at,
    join: (first, then) => of((epoch) => pool.join(at(first, epoch), at(then, epoch))),
    straight: of(() => pool.straight),
    towards: (history, branch) => of((epoch) => pool.towards(at(history, epoch), branch)),
    now: ({ above, behaviour, probability }) => ({
      above: at(above, epochs - 1),
      behaviour: at(behaviour, epochs - 1),
      probability,
    }),
  };
}
