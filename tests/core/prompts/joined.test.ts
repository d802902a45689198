import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { measured, rendered } from "#core/hearing/measure.ts";
import { joined } from "#core/prompts/joined.ts";
import { admit } from "#core/signals/admit.ts";
import { fromDecibels } from "#core/units/decibels.ts";

const rate = 48_000;

/** A hum with harmonics, of so many seconds and such a size, that begins and ends anywhere. */
const voice = (length: number, size: number, pitch = 120): Float32Array =>
  Float32Array.from({ length: Math.round(length * rate) }, (_, n) =>
    [1, 2, 3, 4, 5].reduce(
      (sum, k) => sum + (size / k) * Math.cos((2 * Math.PI * k * pitch * n) / rate + k),
      0,
    ),
  );

const both = (samples: Float32Array) => ({ left: samples, right: samples, rate });

describe("pieces joined", () => {
  test("last as long as the pieces and the gaps, silent in the gaps alone", () => {
    const made = joined([voice(0.3, 0.1), voice(0.2, 0.1), voice(0.1, 0.1)], rate, [0, 0.06, 0]);
    expect(made.length).toBe(0.66 * rate);
    const gap = made.subarray(0.3 * rate, 0.36 * rate);
    expect(gap.every((sample) => sample === 0)).toBe(true);
    const ones = made.subarray(0.3 * rate - 480, 0.3 * rate);
    expect(ones.some((sample) => sample !== 0)).toBe(true);
  });

  test("pass gate one whatever their size, at the same level, as loud as a sound may be", () => {
    const sizes = fc.double({ min: 0.001, max: 4, noNaN: true });
    const lengths = fc.double({ min: 0.15, max: 0.8, noNaN: true });
    fc.assert(
      fc.property(sizes, lengths, (size, length) => {
        const made = joined([voice(length, size), voice(0.2, size)], rate, [0, 0.06]);
        expect(admit(both(made))).not.toHaveProperty("refused");
        const { peak, level } = measured(made, rate);
        const reached = Math.max(peak / rendered.peak, level / rendered.level);
        expect(Math.abs(reached - 1)).toBeLessThan(1e-4);
      }),
      { numRuns: 30 },
    );
  });

  test("a sharp peak keeps the whole lower, under the cap that it has when the level is raised", () => {
    const sharp = voice(0.4, 0.02);
    sharp.set([0.5, 0.6, 0.5], 9000);
    const { peak, level } = measured(joined([sharp], rate, [0]), rate);
    expect(peak).toBeCloseTo(rendered.peak, 5);
    expect(level).toBeLessThan(rendered.level / 2);
  });

  test("open softly after any hush within a word that is silence at the level they play at", () => {
    for (let below = 56; below <= 74; below += 1) {
      const word = voice(0.4, 0.1);
      const peak = word.reduce((most, sample) => Math.max(most, Math.abs(sample)), 0);
      const hush = peak * fromDecibels(-below);
      for (let n = 6000; n < 9000; n += 1) word[n] = hush * Math.cos((2 * Math.PI * n) / 24);
      for (let n = 9000; n < 9048; n += 1) word[n] = peak * Math.cos((2 * Math.PI * n) / 24);
      const made = joined([word], rate, [0]);
      expect(admit(both(made)), `${below} dB below`).not.toHaveProperty("refused");
    }
  });

  test("leave the pieces as they were", () => {
    const piece = voice(0.2, 0.1);
    const before = piece.slice();
    joined([piece, piece], rate, [0, 0]);
    expect(piece).toEqual(before);
  });

  test.for([
    ["no pieces", [], []],
    ["silence", [new Float32Array(4800)], [0]],
    ["an empty file", [new Float32Array(0)], [0]],
    ["a gap too few", [voice(0.2, 0.1), voice(0.2, 0.1)], [0]],
  ] as [string, Float32Array[], number[]][])("%s: a mistake of ours", ([, pieces, gaps]) => {
    expect(() => joined(pieces, rate, gaps)).toThrow(RangeError);
  });
});
