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
  /** A way with its behaviours as they are now. */
  readonly now: (way: Way) => Way;
}

export function createHistories(pool: Pool, epochs: number): Histories {
  if (epochs === 1)
    return {
      of: (behaviour) => behaviour(0),
      at: (history) => history,
      join: pool.join,
      straight: pool.straight,
      now: (way) => way,
    };
  const known = new Map<string, number>();
  const all: (readonly number[])[] = [];
  const number = (behaviours: readonly number[]): number => {
    const key = behaviours.join(" ");
    const found = known.get(key);
    if (found !== undefined) return found;
    known.set(key, all.length);
    return all.push(behaviours) - 1;
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
    now: ({ above, behaviour, probability }) => ({
      above: at(above, epochs - 1),
      behaviour: at(behaviour, epochs - 1),
      probability,
    }),
  };
}
