import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  add,
  agreement,
  type Complex,
  multiply,
  real,
  scale,
  size,
  subtract,
  zero,
} from "#core/units/complex.ts";
import { fromDecibels, toDecibels } from "#core/units/decibels.ts";
import { chain, type Matrix } from "#core/units/matrix.ts";
import { seeded } from "#core/units/random.ts";

const part = fc.double({ min: -1000, max: 1000, noNaN: true });
const complex: fc.Arbitrary<Complex> = fc.record({ re: part, im: part });
const matrices = (rows: number, columns: number): fc.Arbitrary<Matrix> =>
  fc.array(fc.array(complex, { minLength: columns, maxLength: columns }), {
    minLength: rows,
    maxLength: rows,
  });

const expectClose = (a: Complex, b: Complex, beside = 1) =>
  expect(size(subtract(a, b)) / (1 + beside)).toBeLessThan(1e-9);

describe("complex numbers", () => {
  test("i times i is minus one", () => {
    const i = { re: 0, im: 1 };
    expect(multiply(i, i)).toEqual({ re: -1, im: 0 });
  });

  test("multiplying multiplies sizes, adds up with adding, and subtracting undoes adding", () => {
    fc.assert(
      fc.property(complex, complex, complex, (a, b, c) => {
        const beside = size(a) * (size(b) + size(c));
        expect(Math.abs(size(multiply(a, b)) - size(a) * size(b))).toBeLessThan(
          1e-9 * (1 + beside),
        );
        expectClose(multiply(a, add(b, c)), add(multiply(a, b), multiply(a, c)), beside);
        expectClose(subtract(add(a, b), b), a, size(b));
        expectClose(scale(a, 3), multiply(a, real(3)));
      }),
    );
  });

  test("agreement tells polarity, and nothing of a quarter turn", () => {
    const gain = { re: 3, im: 4 };
    expect(agreement(gain, scale(gain, 2))).toBe(50);
    expect(agreement(gain, scale(gain, -1))).toBe(-25);
    expect(agreement(gain, multiply(gain, { re: 0, im: 1 }))).toBe(0);
  });
});

describe("matrices", () => {
  const identity: Matrix = [
    [real(1), zero],
    [zero, real(1)],
  ];

  const expectAlike = (a: Matrix, b: Matrix, beside = 1) => {
    expect(a.flat()).toHaveLength(b.flat().length);
    for (const [at, entry] of a.flat().entries()) expectClose(entry, b.flat()[at] ?? zero, beside);
  };

  test("the order of pairing does not matter", () => {
    fc.assert(
      fc.property(matrices(2, 2), matrices(2, 5), matrices(5, 2), (last, middle, first) => {
        const forward = chain(chain(last, middle), first);
        expectAlike(forward, chain(last, chain(middle, first)), 1e9);
      }),
    );
  });

  test("identity changes nothing, before or after", () => {
    fc.assert(
      fc.property(matrices(2, 2), (matrix) => {
        expectAlike(chain(identity, matrix), matrix);
        expectAlike(chain(matrix, identity), matrix);
      }),
    );
  });

  test("what comes first is the second argument", () => {
    const swap: Matrix = [
      [zero, real(1)],
      [real(1), zero],
    ];
    const leftGone: Matrix = [
      [zero, zero],
      [zero, real(1)],
    ];
    expect(chain(swap, leftGone)).toEqual([
      [zero, real(1)],
      [zero, zero],
    ]);
  });

  test("sizes that do not fit are refused with both", () => {
    expect(() => chain([[real(1), zero, zero]], identity)).toThrow(
      "a row of 3 gains cannot take 2 signals",
    );
  });
});

describe("decibels", () => {
  // Twice the voltage is 6.02 dB, ten times 20 dB, from 20 lg of the ratio.
  test.each([
    [1, 0],
    [2, 6.0206],
    [0.5, -6.0206],
    [10, 20],
  ])("a ratio of %f is %f dB", (ratio, decibels) => {
    expect(toDecibels(ratio)).toBeCloseTo(decibels, 4);
  });

  test("there and back is the same; nothing at all is minus infinity", () => {
    fc.assert(
      fc.property(fc.double({ min: -200, max: 200, noNaN: true }), (level) => {
        expect(toDecibels(fromDecibels(level))).toBeCloseTo(level, 9);
      }),
    );
    expect(toDecibels(0)).toBe(Number.NEGATIVE_INFINITY);
  });
});

describe("chance from a seed", () => {
  const draw = (seed: number, count: number) => {
    const random = seeded(seed);
    return Array.from({ length: count }, random);
  };

  test("the same seed gives the same stream, another seed another", () => {
    fc.assert(
      fc.property(fc.integer(), (seed) => {
        expect(draw(seed, 20)).toEqual(draw(seed, 20));
        expect(draw(seed, 20)).not.toEqual(draw(seed + 1, 20));
        for (const value of draw(seed, 100)) {
          expect(value).toBeGreaterThanOrEqual(0);
          expect(value).toBeLessThan(1);
        }
      }),
    );
  });

  test("is spread evenly", () => {
    const tenths = Array.from({ length: 10 }, () => 0);
    for (const value of draw(7, 10_000)) {
      const tenth = Math.floor(value * 10);
      tenths[tenth] = (tenths[tenth] ?? 0) + 1;
    }
    // A tenth of 10,000 has a standard deviation of 30; five of them either way.
    for (const count of tenths) expect(Math.abs(count - 1000)).toBeLessThan(150);
  });
});
