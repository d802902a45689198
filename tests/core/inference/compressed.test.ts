import { expect, test } from "vitest";
import { compressed } from "#core/inference/compressed.ts";
import { plan } from "#core/inference/plan.ts";
import type { Problem } from "#core/inference/problem.ts";
import { followed } from "./followed.ts";
import { optimumOfSets } from "./optimum-of-sets.ts";
import { problemOf } from "./problems.ts";

const size = { hypotheses: 10, tests: 6, looks: 4, repairs: 9, slip: 0.05 };

/** Each answer told in so many ways, each as often as a share says: the ways say nothing more. */
const toldInWays = (problem: Problem, ways: readonly number[]): Problem => ({
  ...problem,
  tests: problem.tests.map(({ seconds, answers }) => ({
    seconds,
    answers: answers.map((row) =>
      Float64Array.from([...row].flatMap((p) => ways.map((share) => p * share))),
    ),
  })),
});

test("an answer told in 26 ways that mean the same is one answer", () => {
  const ways = Array.from({ length: 26 }, (_, at) => (at + 1) / 351);
  for (const seed of [1, 2, 3, 4, 5]) {
    const problem = problemOf(seed, size);
    const wordy = toldInWays(problem, ways);
    const columns = (one: Problem) =>
      compressed(one, 15, 130).tests.map((each) => each.columns.length);
    expect(columns(wordy)).toEqual(columns(problem));
    expect(plan(wordy).seconds / plan(problem).seconds).toBeCloseTo(1, 9);
  }
});

test("what tells nothing, cures nothing or is never answered makes no difference", () => {
  const problem = problemOf(6, size);
  const idle = {
    ...problem,
    tests: [
      ...problem.tests,
      { seconds: 1, answers: problem.fine.map(() => Float64Array.of(0.25, 0.75, 0)) },
    ],
    repairs: [...problem.repairs, { seconds: 1, cures: new Float64Array(10) }],
    fine: problem.fine.map(() => false),
  };
  expect(plan(idle).seconds).toBe(plan({ ...problem, fine: idle.fine }).seconds);
});

test("of certain tests that tell the same the quicker is kept, of repairs the one that cures as much for less", () => {
  const answers = [Float64Array.of(1, 0), Float64Array.of(0, 1)];
  const swapped = answers.toReversed();
  const small = compressed(
    {
      probabilities: Float64Array.of(1, 1),
      fine: [false, false],
      tests: [
        { seconds: 9, answers },
        { seconds: 8, answers: swapped },
      ],
      repairs: [
        { seconds: 20, cures: Float64Array.of(1, 1) },
        { seconds: 30, cures: Float64Array.of(1, 0) },
        { seconds: 10, cures: Float64Array.of(0, 1) },
      ],
    },
    15,
    8,
  );
  expect(small.tests.map(({ at }) => at)).toEqual([1]);
  expect(small.repairs.map(({ at }) => at)).toEqual([0, 2]);
});

test("what is fine is never merged with what is wrong, however few are told apart", () => {
  const problem: Problem = {
    ...problemOf(7, { ...size, hypotheses: 40, repairs: 40 }),
    fine: Array.from({ length: 40 }, (_, at) => at % 2 === 0),
  };
  const { weights, wrong } = compressed(problem, 4, 8);
  expect(weights.length).toBe(4);
  const all = problem.probabilities.reduce((sum, p) => sum + p, 0);
  const right = problem.probabilities.reduce(
    (sum, p, at) => (at % 2 === 1 ? sum + p / all : sum),
    0,
  );
  expect(weights.reduce((sum, p, at) => sum + p * (wrong[at] ?? 0), 0)).toBeCloseTo(right, 9);
});

test("more hypotheses than are told apart: what joins the one most like it costs little", () => {
  const wide = { hypotheses: 17, tests: 5, looks: 4, repairs: 14 };
  const problems = Array.from({ length: 8 }, (_, at) => problemOf(100 + at, wide));
  const ratios = problems.map(
    (problem) => followed(problem, { hypotheses: 5 }) / optimumOfSets(problem, 600),
  );
  const mean = ratios.reduce((sum, one) => sum + one, 0) / ratios.length;
  console.log(
    `5 of 17 told apart: mean ${mean.toFixed(4)}, worst ${Math.max(...ratios).toFixed(4)}`,
  );
  expect(mean).toBeLessThan(1.02);
}, 60_000);
