import { type Trial, trialKey } from "#core/checks/noise.ts";
import { type Cause, causeKey, unlisted } from "./cause.ts";
import type { World } from "./world.ts";

/** One cause with all its worlds, and what is noticed of each trial on the average of them. */
export interface ByCause {
  readonly cause: Cause;
  readonly worlds: readonly World[];
  readonly means: ReadonlyMap<string, Float64Array>;
}

/** Worlds by their cause, in the order they came. */
export function byCause(worlds: readonly World[], trials: readonly Trial[]): readonly ByCause[] {
  const found = new Map<string, World[]>();
  for (const world of worlds) {
    const key = causeKey(world.cause);
    found.set(key, [...(found.get(key) ?? []), world]);
  }
  return [...found.values()].flatMap((some) => {
    const [first] = some;
    if (first === undefined) return [];
    const means = new Map(trials.map((trial) => [trialKey(trial), meanOf(some, trial)] as const));
    return [{ cause: first.cause, worlds: some, means }];
  });
}

function meanOf(worlds: readonly World[], trial: Trial): Float64Array {
  const all = worlds.reduce((sum, { weight }) => sum + weight, 0);
  const [first] = worlds;
  const mean = new Float64Array(first?.meant(trial).length ?? 0);
  for (const world of worlds)
    for (const [at, p] of world.meant(trial).entries())
      mean[at] = (mean[at] ?? 0) + (world.weight / all) * p;
  return mean;
}

/** Answers that differ less than this on the average tell nothing apart. */
const differs = 0.15;

/** Whether no trial tells two causes apart. What is on no list is like nothing. */
export function areAlike(one: ByCause, other: ByCause, trials: readonly Trial[]): boolean {
  if (one.cause.cause === unlisted.cause || other.cause.cause === unlisted.cause) return false;
  return trials.every((trial) => {
    const [a, b] = [one.means.get(trialKey(trial)), other.means.get(trialKey(trial))];
    return a?.every((p, at) => Math.abs(p - (b?.[at] ?? 0)) < differs) ?? true;
  });
}
