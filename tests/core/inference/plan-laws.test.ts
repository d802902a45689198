import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { plan } from "#core/inference/plan.ts";
import type { Problem, Step } from "#core/inference/problem.ts";
import { answered, shares, stopping, unmended } from "./optimum.ts";
import { problemOf, reordered, sizeOf, slower } from "./problems.ts";

const seed = fc.integer({ min: 1, max: 1_000_000 });
/** Half of them with slips. */
const problem = fc
  .tuple(seed, fc.constantFrom(0, 0.05))
  .map(([one, slip]) => problemOf(one, { ...sizeOf(one), slip }));
const certain = seed.map((one) => problemOf(one, { ...sizeOf(one), hypotheses: 8, repairs: 7 }));

const holds = (check: (problem: Problem) => void, problems = problem) =>
  fc.assert(fc.property(problems, check), { numRuns: 100, seed: 4 });

const places = (one: Problem): number[] => [...one.probabilities.keys()];

test("a hypothesis split in two alike changes nothing", () => {
  holds((one) => {
    const split = plan(reordered(one, [...places(one), 1]));
    expect(split.seconds / plan(one).seconds).toBeCloseTo(1, 9);
  });
});

test("the order of hypotheses does not matter", () => {
  holds((one) => {
    const other = plan(reordered(one, places(one).toReversed()));
    expect(other.seconds / plan(one).seconds).toBeCloseTo(1, 9);
  });
});

test("probabilities are taken in proportion", () => {
  holds((one) => {
    const probabilities = one.probabilities.map((p) => p * 1000);
    expect(plan({ ...one, probabilities }).seconds / plan(one).seconds).toBeCloseTo(1, 9);
  });
});

test("all seconds times seven, the fallback too: seven times the seconds, and the same step", () => {
  holds((one) => {
    const slow = plan(slower(one, 7), { fallback: 4200 });
    const quick = plan(one);
    expect(slow.seconds / quick.seconds).toBeCloseTo(7, 8);
    expect(slow.next).toEqual(quick.next);
  });
});

test("one test more never makes it longer where the search is exact", () => {
  holds((one) => {
    const all = plan(one);
    const fewer = plan({ ...one, tests: one.tests.slice(1) });
    if (all.exact && fewer.exact) expect(all.seconds).toBeLessThan(fewer.seconds * (1 + 1e-9));
  }, certain);
});

test("it never costs more than to stop now, and other first steps come in order after the best", () => {
  holds((one) => {
    const { seconds, runnersUp } = plan(one);
    expect(seconds).toBeLessThan(stopping(shares(one), one, 600) * (1 + 1e-9) + 1e-9);
    const others = runnersUp.map((choice) => choice.seconds);
    expect([seconds, ...others]).toEqual([seconds, ...others].toSorted((a, b) => a - b));
  });
});

/** The seconds of a step, and of the best plan from each belief it leads to. */
function afterwards(one: Problem, next: Step): number {
  const weights = shares(one);
  if (next.step === "done") return stopping(weights, one, 600);
  const [seconds, beliefs] =
    next.step === "test"
      ? [one.tests[next.at]?.seconds, answered(weights, one, next.at)]
      : [one.repairs[next.at]?.seconds, [unmended(weights, one, next.at)]];
  return beliefs
    .map((left) => ({ left, mass: left.reduce((sum, p) => sum + p, 0) }))
    .filter(({ mass }) => mass > 0)
    .reduce(
      (sum, { left, mass }) => sum + mass * plan({ ...one, probabilities: left }).seconds,
      seconds ?? Number.NaN,
    );
}

test("where the search is exact, each first step costs what it leads to", () => {
  const whole = certain.map((one) => ({
    ...one,
    repairs: one.repairs.filter(({ cures }) => !cures.includes(0.5)),
  }));
  holds((one) => {
    const { next, seconds, runnersUp, exact } = plan(one);
    expect(exact).toBe(true);
    for (const choice of [{ next, seconds }, ...runnersUp])
      expect(afterwards(one, choice.next) / choice.seconds).toBeCloseTo(1, 9);
  }, whole);
});

describe("when there is nothing to do", () => {
  const bare = { tests: [], repairs: [] };

  test("nothing is wrong: done, for nothing", () => {
    const { next, seconds } = plan({ ...bare, probabilities: Float64Array.of(1), fine: [true] });
    expect([next.step, seconds]).toEqual(["done", 0]);
  });

  test("nothing can be mended: done, for the fallback wherever something is wrong", () => {
    const one = { ...bare, probabilities: Float64Array.of(1, 3), fine: [true, false] };
    expect(plan(one).seconds).toBeCloseTo(450, 9);
    expect(plan(one, { fallback: 100 }).seconds).toBeCloseTo(75, 9);
  });

  test("nothing is known: done", () => {
    const { next, seconds } = plan({ ...bare, probabilities: Float64Array.of(), fine: [] });
    expect([next.step, seconds]).toEqual(["done", 0]);
  });
});
