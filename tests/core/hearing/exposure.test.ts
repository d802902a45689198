import { describe, expect, test } from "vitest";
import { shareOfDay, together, unheard } from "#core/hearing/exposure.ts";
import { fromDecibels } from "#core/units/decibels.ts";

/** What a steady level at the ear adds up to, where full scale makes 115 dB. */
const heard = (atEar: number, seconds: number) => ({
  seconds,
  energy: seconds * fromDecibels(atEar - 115) ** 2,
});

describe("the share of a day's noise", () => {
  // NIOSH 98-126, criteria for a recommended standard: 85 dBA for eight hours, 3 dB exchange rate.
  test.for([
    [85, 8 * 3600],
    [88, 4 * 3600],
    [91, 2 * 3600],
    [94, 3600],
    [100, 900],
    [82, 16 * 3600],
  ] as const)("is all of it at %d dBA for %d s", ([level, seconds]) => {
    // The table's 3 dB halve; energies halve at 3.01.
    expect(shareOfDay(heard(level, seconds))).toBeCloseTo(1, 1);
  });

  test("is twice of it at 94 dBA for two hours", () => {
    expect(shareOfDay(heard(94, 2 * 3600))).toBeCloseTo(2, 1);
  });

  test("is nothing where nothing sounded, and adds up", () => {
    expect(shareOfDay(unheard)).toBe(0);
    const [one, other] = [heard(60, 10), heard(70, 5)];
    expect(shareOfDay(together(one, other))).toBeCloseTo(shareOfDay(one) + shareOfDay(other), 12);
  });
});
