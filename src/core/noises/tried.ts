import type { Noticed } from "#core/checks/finding.ts";
import { answersTo, type Trial, trialKey } from "#core/checks/noise.ts";
import { meant, slip } from "#core/checks/slips.ts";
import type { World } from "./world.ts";

/** One trial with all that was answered to it. */
export interface Tried {
  readonly trial: Trial;
  /** How likely what was answered is of each answer that may have been meant. Whoever tries it twice notices the same twice; only slips are drawn anew. */
  readonly given: Float64Array;
  readonly times: number;
  /** It cannot be done here. */
  readonly cannot: boolean;
  /** Nobody could tell what became of the noise. */
  readonly untold: boolean;
}

/** Findings by what was tried, in whichever order they came. */
export function triedIn(findings: readonly Noticed[]): ReadonlyMap<string, Tried> {
  const tried = new Map<string, Tried>();
  for (const { asked, results } of findings) {
    const { trial } = asked;
    const answers = answersTo(trial.try);
    const known = (results[0] ?? []).filter((one) => answers.some((answer) => answer === one));
    const before = tried.get(trialKey(trial));
    const cannot = results[0]?.length === 0;
    const now = meant(answers, known.length === 0 ? answers : known, slip);
    tried.set(trialKey(trial), {
      trial,
      given: before ? before.given.map((p, at) => p * (now[at] ?? 1)) : now,
      times: (before?.times ?? 0) + 1,
      cannot: cannot || before?.cannot === true,
      untold: known.length === answers.length || before?.untold === true,
    });
  }
  return tried;
}

/** How likely everything that was noticed is in a world. */
export function likelihoodOf(world: World, tried: Iterable<Tried>): number {
  let product = 1;
  for (const { trial, given } of tried) {
    const chances = world.meant(trial);
    product *= chances.reduce((sum, p, at) => sum + p * (given[at] ?? 0), 0);
  }
  return product;
}

/** What would be meant if a trial were made, after what was answered to it before. */
export function meantNext(world: World, trial: Trial, before: Tried | undefined): Float64Array {
  const chances = world.meant(trial);
  if (before === undefined) return chances;
  const now = chances.map((p, at) => p * (before.given[at] ?? 1));
  const all = now.reduce((sum, p) => sum + p, 0);
  return now.map((p) => p / all);
}
