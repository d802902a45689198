import { expect, test } from "vitest";
import { long } from "#tests/support/long.ts";
import { followedOf } from "./followed.ts";
import { hardenedOf } from "./hardened.ts";
import { type Certain, optimumOf } from "./optimum.ts";

const fallback = 600;

/** Two things as likely, a question of 1 s that tells them apart, and a repair of 10 s for each: 1 + 10. Without the question 10 + 10 / 2. */
const simple: Certain = {
  odds: [1, 1],
  fine: [false, false],
  tests: [{ seconds: 1, answer: [0, 1] }],
  repairs: [
    { seconds: 10, cures: [1, 0] },
    { seconds: 10, cures: [0, 1] },
  ],
};

test("worked by hand", () => {
  expect(optimumOf(simple, fallback)).toBeCloseTo(11, 12);
  expect(optimumOf({ ...simple, tests: [] }, fallback)).toBeCloseTo(15, 12);
  expect(optimumOf({ ...simple, repairs: [] }, fallback)).toBeCloseTo(fallback, 12);
  expect(optimumOf({ ...simple, fine: [true, false], tests: [] }, fallback)).toBeCloseTo(10, 12);
});

/** A cure by half for 5 s: 5, then half of the time all that is dearer. */
test("a repair that cures by half, worked by hand", () => {
  const half: Certain = {
    odds: [1],
    fine: [false],
    tests: [],
    repairs: [
      { seconds: 5, cures: [0.5] },
      { seconds: 60, cures: [1] },
    ],
  };
  expect(optimumOf(half, fallback)).toBeCloseTo(5 + 30, 12);
});

/** Those of even seeds may be healthy; of odd ones something is known to be wrong. */
const seeds = Array.from({ length: long ? 200 : 16 }, (_, at) => at + 1);

test("on so many rigs without slips the program's search is the optimum", {
  timeout: 600_000,
}, () => {
  const ratios = seeds.map(hardenedOf).map((problem) => {
    const least = optimumOf(problem, fallback);
    return least === 0 ? 1 : followedOf(problem, fallback) / least;
  });
  const mean = ratios.reduce((sum, one) => sum + one, 0) / ratios.length;
  console.log(`mean ${mean.toFixed(4)}, worst ${Math.max(...ratios).toFixed(4)} of the optimum`);
  expect(Math.min(...ratios)).toBeGreaterThan(1 - 1e-9);
  expect(mean).toBeLessThan(1.02);
  expect(Math.max(...ratios)).toBeLessThan(1.1);
});
