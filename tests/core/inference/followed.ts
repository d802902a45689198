import { plan } from "#core/inference/plan.ts";
import type { PlanOptions, Problem } from "#core/inference/problem.ts";
import { answered, shares, stopping, unmended } from "./optimum.ts";

const sum = (some: Float64Array): number => some.reduce((total, one) => total + one, 0);

/** Expected seconds of doing what `plan` says, planned anew after each answer, over every answer there may be. */
export function followed(problem: Problem, options: PlanOptions = {}): number {
  const fallback = options.fallback ?? 600;
  const known = new Map<string, number>();
  const go = (
    weights: Float64Array,
    tests: readonly number[],
    repairs: readonly number[],
  ): number => {
    const key = `${weights}|${repairs}`;
    const found = known.get(key) ?? step(weights, tests, repairs);
    known.set(key, found);
    return found;
  };
  const step = (
    weights: Float64Array,
    tests: readonly number[],
    repairs: readonly number[],
  ): number => {
    const mass = sum(weights);
    if (mass === 0) return 0;
    const here: Problem = {
      probabilities: weights,
      fine: problem.fine,
      tests: problem.tests.filter((_, at) => tests.includes(at)),
      repairs: problem.repairs.filter((_, at) => repairs.includes(at)),
    };
    const { next } = plan(here, options);
    if (next.step === "done") return stopping(weights, problem, fallback);
    if (next.step === "repair") {
      const seconds = here.repairs[next.at]?.seconds ?? Number.NaN;
      const rest = repairs.filter((_, at) => at !== next.at);
      return seconds * mass + go(unmended(weights, here, next.at), tests, rest);
    }
    const seconds = here.tests[next.at]?.seconds ?? Number.NaN;
    const rest = tests.filter((_, at) => at !== next.at);
    return answered(weights, here, next.at).reduce(
      (total, left) => total + go(left, rest, repairs),
      seconds * mass,
    );
  };
  return go(shares(problem), [...problem.tests.keys()], [...problem.repairs.keys()]);
}
