import { expect, test } from "vitest";
import { seeded } from "#core/units/random.ts";
import { gapByChance, reliability, weightedGap } from "./calibration.ts";

const random = seeded(3);
const draws = Array.from({ length: 20_000 }, () => ({ stated: random(), luck: random() }));

test("who states what is true has no gap, but for chance", () => {
  const table = reliability(draws.map(({ stated, luck }) => ({ stated, right: luck < stated })));
  expect(table).toHaveLength(10);
  expect(weightedGap(table)).toBeLessThan(0.01);
  expect(weightedGap(table)).toBeLessThan(3 * gapByChance(table));
});

test("who overstates by a tenth of doubt has that gap", () => {
  const sure = draws.map(({ luck }) => ({ stated: 0.95, right: luck < 0.85 }));
  expect(weightedGap(reliability(sure))).toBeCloseTo(0.1, 1);
});

test("certainty falls into the last bin", () => {
  expect(reliability([{ stated: 1, right: true }])).toEqual([
    { from: 0.9, count: 1, stated: 1, true: 1 },
  ]);
});

test("the gap that chance makes of few", () => {
  const gaps = Array.from({ length: 400 }, (_, at) => {
    const some = draws.slice(50 * at, 50 * at + 50);
    const table = reliability(some.map(({ luck }) => ({ stated: 0.7, right: luck < 0.7 })));
    return { found: weightedGap(table), expected: gapByChance(table) };
  });
  const mean = (of: (gap: (typeof gaps)[number]) => number) =>
    gaps.reduce((sum, one) => sum + of(one), 0) / gaps.length;
  expect(mean(({ found }) => found)).toBeCloseTo(
    mean(({ expected }) => expected),
    2,
  );
});
