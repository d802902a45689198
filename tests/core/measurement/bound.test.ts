import { describe, expect, test } from "vitest";
import { bounds, errorsOf, measure } from "./truth.ts";
import { unknown } from "./unknown.ts";

describe.for([0, 20, 40, 60])("at %d dB over the noise", (ratio) => {
  const seeds = [1, 2, 3].map((seed) => seed + ratio);
  const all = seeds.map((seed) => {
    const made = unknown(seed);
    const result = measure(made, ratio, seed);
    const off = (result.drift.value - made.drift) / 1e6;
    return {
      errors: errorsOf(made, ratio, result),
      drift: off / bounds(made, ratio).drift,
      stated: (off * 1e6) / result.drift.error,
    };
  });
  const errors = all.flatMap((one) => one.errors);

  test("every entry's error is within 1 dB of the Cramér-Rao bound", () => {
    for (const [input, programme] of [
      [0, 0],
      [0, 1],
      [1, 0],
      [1, 1],
    ]) {
      const own = errors.filter((one) => one.input === input && one.programme === programme);
      const square = own.reduce((sum, one) => sum + one.square / one.bound, 0) / own.length;
      expect(own.length).toBe(720);
      expect(10 * Math.log10(square), `entry ${input} ${programme}`).toBeLessThan(1);
      // No estimator without bias is better: chance makes 0.2 dB of so many.
      expect(10 * Math.log10(square), `entry ${input} ${programme}`).toBeGreaterThan(-0.8);
    }
  });

  test("the stated errors are those that are made", () => {
    const parts = errors.flatMap((one) => one.parts);
    const square = parts.reduce((sum, part) => sum + part * part, 0) / parts.length;
    expect(square).toBeGreaterThan(0.85);
    expect(square).toBeLessThan(1.2);
    const beyond = parts.filter((part) => Math.abs(part) > 3).length / parts.length;
    expect(beyond).toBeLessThan(0.01);
  });

  test("the drift is within three times its bound", () => {
    for (const { drift, stated } of all) {
      expect(Math.abs(drift)).toBeLessThan(3);
      expect(Math.abs(stated)).toBeLessThan(4);
    }
  });
});
