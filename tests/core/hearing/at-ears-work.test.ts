import { describe, expect, test } from "vitest";
import { atEars } from "#core/hearing/at-ears.ts";
import type { EarsAt } from "#core/hearing/response.ts";
import { finish } from "#core/hearing/work.ts";
import { real, zero } from "#core/units/complex.ts";
import { each, flat, highPass, noise, rate } from "./sounds.ts";

const heard = (...what: Parameters<typeof atEars>) => finish(atEars(...what));
const programme = noise(30_000, 1);

describe("the work", () => {
  const minute = noise(60 * rate, 3);

  test("goes on from 0 to 1, in pieces of a few milliseconds, a minute in about a second", () => {
    const runs = [1, 2, 3].map(() => {
      const pieces: number[] = [];
      let [told, before] = [0, performance.now()];
      for (const done of atEars(minute, each(highPass(60)))) {
        const now = performance.now();
        pieces.push(now - before);
        expect(done).toBeGreaterThanOrEqual(told);
        [told, before] = [done, now];
      }
      expect(told).toBe(1);
      return pieces.sort((a, b) => a - b);
    });
    const total = (pieces: number[]) => pieces.reduce((sum, time) => sum + time, 0);
    expect(Math.min(...runs.map(total))).toBeLessThan(1500);
    // All but one in a hundred: another program may take the processor away from one.
    const long = runs.map((pieces) => pieces[Math.floor(pieces.length * 0.99)] ?? 0);
    expect(Math.min(...long)).toBeLessThan(16);
  });

  test("can be stopped: nothing more is asked of the chain", () => {
    let asked = 0;
    const counting: EarsAt = (at) => {
      asked += 1;
      return flat(1, 0, 0, 1)(at);
    };
    for (const done of atEars(minute, counting)) if (done > 0.1) break;
    expect(asked).toBeGreaterThan(100);
    expect(asked).toBeLessThan(2000);
  });

  test("leaves the programme as it was", () => {
    const before = { left: programme.left.slice(), right: programme.right.slice() };
    heard(programme, flat(0, 0, 0, 0));
    expect(programme).toMatchObject(before);
  });
});

describe("a chain that is a mistake", () => {
  const broken: [why: string, chain: EarsAt][] = [
    ["not a number", flat(1, Number.NaN, 0, 1)],
    ["infinite", flat(1, 0, 0, Number.POSITIVE_INFINITY)],
    ["one row only", () => [[real(1), zero]]],
    ["three columns", () => [[real(1), zero, zero], [zero]]],
  ];

  test.for(broken)("%s: thrown, with the frequency", ([, chain]) => {
    expect(() => heard(programme, chain)).toThrow(/at 0\.0585\d+ Hz/);
  });

  test("is asked above zero and up to half the rate only", () => {
    const asked: number[] = [];
    heard(noise(10, 1), (at) => {
      asked.push(at);
      return flat(1, 0, 0, 1)(at);
    });
    expect(Math.min(...asked)).toBeGreaterThan(0);
    expect(Math.max(...asked)).toBe(rate / 2);
  });
});
