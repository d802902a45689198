import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { arrival, energyOf, gainFor, levelAt, moved, steady } from "#audio/course.ts";
import { tamed } from "#audio/ear-matrix.ts";

describe("a course of level", () => {
  test("goes one step in its time, in a straight line of decibels", () => {
    const course = moved(steady(-50), 3, 10);
    expect([10, 10.125, 10.25, 11].map((at) => levelAt(course, at))).toEqual([
      -50, -48.5, -47, -47,
    ]);
    expect(arrival(course)).toBe(10.25);
  });

  test("stops at the cap of -20 and the floor of -70", () => {
    expect(moved(steady(-21), 3, 0).to).toBe(-20);
    expect(moved(steady(-69), -3, 0).to).toBe(-70);
  });

  test("a rendered signal at -26 is played at any level by its gain", () => {
    expect(gainFor(-26)).toBe(1);
    expect(gainFor(-46)).toBeCloseTo(0.1, 10);
  });

  test("never rises faster than 3 dB in 250 ms, whatever is pressed when", () => {
    const presses = fc.array(
      fc.record({ by: fc.constantFrom(3, -3), after: fc.double({ min: 0, max: 1, noNaN: true }) }),
    );
    fc.assert(
      fc.property(presses, (all) => {
        let course = steady(-50);
        let now = 0;
        let before = -50;
        for (const { by, after } of all) {
          now += after;
          const level = levelAt(course, now);
          expect(level - before).toBeLessThanOrEqual(after * 12 + 1e-9);
          course = moved(course, by, now);
          expect(levelAt(course, now)).toBeCloseTo(level, 9);
          before = level;
        }
        expect(course.to).toBeLessThanOrEqual(-20);
      }),
    );
  });
});

describe("the energy of what follows a course", () => {
  test("is the sum of its power over time, whatever it does", () => {
    const times = fc.double({ min: 0, max: 4, noNaN: true });
    fc.assert(
      fc.property(times, times, fc.integer({ min: -6, max: 6 }), (from, lasts, steps) => {
        const course = moved(steady(-40), 3 * steps, 1);
        const to = from + 0.01 + lasts;
        const pieces = 4000;
        let sum = 0;
        for (let at = 0; at < pieces; at++)
          sum += 10 ** (levelAt(course, from + ((at + 0.5) / pieces) * (to - from)) / 10);
        expect(energyOf(course, from, to) / ((sum / pieces) * (to - from))).toBeCloseTo(1, 4);
      }),
    );
  });
});

describe("a tamed matrix", () => {
  test("is the same when no ear gets more than one side's worth", () => {
    const lost = { ll: 0.5, lr: -0.5, rl: -0.5, rr: 0.5 };
    expect(tamed(lost)).toEqual(lost);
  });

  test("is smaller as a whole when one does", () => {
    expect(tamed({ ll: 2, lr: -2, rl: 0, rr: 1 })).toEqual({ ll: 0.5, lr: -0.5, rl: 0, rr: 0.25 });
  });

  test("is none when an entry is not finite", () => {
    expect(tamed({ ll: 1, lr: Number.NaN, rl: 0, rr: 1 })).toBeUndefined();
    expect(tamed({ ll: Infinity, lr: 0, rl: 0, rr: 1 })).toBeUndefined();
  });
});
