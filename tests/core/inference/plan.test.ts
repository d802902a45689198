import { expect, test } from "vitest";
import { plan } from "#core/inference/plan.ts";
import { followed } from "./followed.ts";
import { optimum } from "./optimum.ts";
import { optimumOfSets } from "./optimum-of-sets.ts";
import { problemOf, sizeOf } from "./problems.ts";

/** The mean and the worst of some ratios, printed. */
function summary(name: string, ratios: readonly number[]) {
  const mean = ratios.reduce((sum, one) => sum + one, 0) / ratios.length;
  const worst = Math.max(...ratios);
  console.log(`${name}: mean ${mean.toFixed(4)}, worst ${worst.toFixed(4)} of the optimum`);
  return { mean, worst, best: Math.min(...ratios) };
}

const fallback = 600;
const seeds = Array.from({ length: 200 }, (_, at) => at + 1);
const certain = seeds.map((seed) => problemOf(seed, sizeOf(seed)));
const optima = certain.map((problem) => optimumOfSets(problem, fallback));

test("certain answers: as good as dynamic programming over subsets", () => {
  const ratios = certain.map((problem, at) => followed(problem) / (optima[at] ?? 0));
  const { mean, worst, best } = summary("exact search", ratios);
  expect(mean).toBeLessThan(1.02);
  expect(worst).toBeLessThan(1.1);
  expect(best).toBeGreaterThan(1 - 1e-9);
}, 60_000);

test("where the search was exact it says the optimum", () => {
  const plans = certain.map((problem) => plan(problem));
  const exact = plans.filter((one) => one.exact);
  console.log(`exact: ${exact.length} of ${plans.length}`);
  expect(exact.length).toBeGreaterThan(190);
  for (const [at, one] of plans.entries())
    if (one.exact) expect(one.seconds / (optima[at] ?? 0)).toBeCloseTo(1, 9);
});

test("certain answers, with the search that is made for answers that err", () => {
  const ratios = certain.map((problem, at) => followed(problem, { sets: 0 }) / (optima[at] ?? 0));
  const { mean, worst, best } = summary("looking ahead", ratios);
  expect(mean).toBeLessThan(1.02);
  expect(worst).toBeLessThan(1.1);
  expect(best).toBeGreaterThan(1 - 1e-9);
});

test.for([0.05, 0.1, 0.3])(
  "answers wrong with chance %s: near the optimum",
  { timeout: 60_000 },
  (slip) => {
    const size = { hypotheses: 6, tests: 2, looks: 2, repairs: 5, slip };
    const problems = seeds.slice(0, 30).map((seed) => problemOf(seed, size));
    const ratios = problems.map((problem) => followed(problem) / optimum(problem, fallback));
    const { mean, worst, best } = summary(`slips of ${slip}`, ratios);
    expect(mean).toBeLessThan(1.02);
    expect(worst).toBeLessThan(1.1);
    expect(best).toBeGreaterThan(1 - 1e-9);
  },
);
