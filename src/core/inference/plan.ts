import { compressed } from "./compressed.ts";
import { exactly } from "./exact.ts";
import { lookingAhead } from "./lookahead.ts";
import type { Plan, PlanOptions, Problem } from "./problem.ts";

/**
 * The step with the lowest expected seconds to a rig that works: a repair that cures what is wrong, or to know that nothing is. To
 * stop earlier costs `fallback` seconds wherever something is wrong. Where answers are certain and the problem small the search is
 * exact; else it looks ahead so far as its limits allow. Seconds are of the problem as compressed.
 */
export function plan(problem: Problem, options: PlanOptions = {}): Plan {
  const { fallback = 600, hypotheses = 15, answers = 8, sets = 2000, beliefs = 500 } = options;
  const small = compressed(problem, Math.min(hypotheses, 20), answers);
  const known = exactly(small, fallback, sets);
  const [best, ...runnersUp] = known ?? lookingAhead(small, fallback, beliefs);
  const { next, seconds } = best ?? { next: { step: "done" }, seconds: 0 };
  return { next, seconds, runnersUp, exact: known !== undefined };
}
