import { expect, test } from "vitest";
import { capacityOf, entropyOf } from "./entropy.ts";

test("bits of even odds, and of certainty", () => {
  expect(entropyOf([1, 1, 1, 1])).toBeCloseTo(2, 12);
  expect(entropyOf([3, 0])).toBe(0);
});

/** The capacity of a symmetric channel is one bit less the entropy of its errors. Shannon, 1948. */
test("the capacity of an answer that errs", () => {
  const channel = [Float64Array.of(0.9, 0.1), Float64Array.of(0.1, 0.9)];
  expect(capacityOf(channel)).toBeCloseTo(1 - entropyOf([0.9, 0.1]), 9);
});

/** Of an answer that gets lost half of the time half of the bit arrives. */
test("the capacity of an answer that is often none", () => {
  const channel = [Float64Array.of(0.5, 0, 0.5), Float64Array.of(0, 0.5, 0.5)];
  expect(capacityOf(channel)).toBeCloseTo(0.5, 9);
});
