import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { atEars } from "#core/hearing/at-ears.ts";
import type { EarsAt } from "#core/hearing/response.ts";
import { finish } from "#core/hearing/work.ts";
import { real, scale, zero } from "#core/units/complex.ts";
import { toDecibels } from "#core/units/decibels.ts";
import { difference, each, flat, highPass, later, noise, peak, rate, rms, sine } from "./sounds.ts";

const heard = (...what: Parameters<typeof atEars>) => finish(atEars(...what));

/** Long enough for three blocks and a bit. */
const programme = noise(30_000, 1);

const flats: [name: string, gains: [number, number, number, number]][] = [
  ["good stereo", [1, 0, 0, 1]],
  ["sides exchanged", [0, 1, 1, 0]],
  ["a mono sum", [0.5, 0.5, 0.5, 0.5]],
  ["one side upside down", [-1, 0, 0, 1]],
  ["both sides upside down", [-1, 0, 0, -1]],
  ["the return lost", [0.5, -0.5, -0.5, 0.5]],
  ["right lost", [1, 0, 0, 0]],
  ["four unlike gains", [0.1, -0.2, 0.3, 0.4]],
];

describe("a chain that does the same at every frequency", () => {
  test.for(flats)("%s, sample for sample", ([, gains]) => {
    const [ll, lr, rl, rr] = gains;
    const { left, right } = heard(programme, flat(...gains));
    const sum = (a: number, b: number) =>
      programme.left.map((x, n) => a * x + b * (programme.right[n] ?? 0));
    expect(difference(left, sum(ll, lr))).toBeLessThan(1e-6);
    expect(difference(right, sum(rl, rr))).toBeLessThan(1e-6);
  });

  test.for([8000, 11_025, 44_100, 96_000, 192_000])("good stereo at %d Hz", (at) => {
    const { left, right } = heard({ ...programme, rate: at }, flat(1, 0, 0, 1));
    expect(difference(left, programme.left)).toBeLessThan(1e-6);
    expect(difference(right, programme.right)).toBeLessThan(1e-6);
  });

  test.for([0, 1, 2, 8191, 8192, 8193])("a programme of %d samples", (count) => {
    const short = noise(count, 2);
    expect(difference(heard(short, flat(1, 0, 0, 1)).left, short.left)).toBeLessThan(1e-6);
  });
});

describe("a delay", () => {
  // Whole samples, since only they can be checked sample for sample: 0.7 ms is 33.6 of them.
  test.for([0, 1, 34, 240, 2400])("of %d samples on one side leaves the other in step", (shift) => {
    const delayed: EarsAt = (at) => [
      [real(1), zero],
      [zero, later(shift / rate)(at)],
    ];
    const { left, right } = heard(programme, delayed);
    expect(difference(left, programme.left)).toBeLessThan(1e-6);
    expect(difference(right, programme.right, { shift })).toBeLessThan(1e-6);
  });

  test("backwards by 5 ms comes out too: headroom for phases that turn back", () => {
    const { left } = heard(programme, each(later(-0.005)));
    const to = left.length - 240;
    expect(difference(left, programme.left, { shift: -240, to })).toBeLessThan(1e-6);
  });

  test("of a part of a sample moves a tone by just that", () => {
    const tone = sine(1000, 48_000, 0.1);
    const { left } = heard({ left: tone, right: tone, rate }, each(later(0.0007)));
    const moved = sine(1000, 48_000, 0.1, -0.7);
    expect(difference(left, moved, { from: 4800, to: 43_200 })).toBeLessThan(1e-5);
  });
});

describe("a high-pass of the first order", () => {
  const cases = [60, 500, 3000].flatMap((corner) =>
    [60, 100, 1000, 10_000].map((frequency) => ({ corner, frequency })),
  );

  test.for(cases)("at $corner Hz: gain at $frequency Hz", ({ corner, frequency }) => {
    const tone = sine(frequency, 2 * rate, 0.1);
    const { left } = heard({ left: tone, right: tone, rate }, each(highPass(corner)));
    const [out, before] = [left, tone].map((it) => rms(it.subarray(rate / 2, (3 * rate) / 2)));
    const gain = toDecibels((out ?? 0) / (before ?? 1));
    expect(gain).toBeCloseTo(-10 * Math.log10(1 + (corner / frequency) ** 2), 2);
  });

  test("turns the phase as the circuit does: a tone at the corner leads by an eighth of a turn", () => {
    const tone = sine(60, 2 * rate, 0.1);
    const { left } = heard({ left: tone, right: tone, rate }, each(highPass(60)));
    const expected = sine(60, 2 * rate, 0.1 * Math.SQRT1_2, 1 / 8);
    expect(difference(left, expected, { from: rate / 2, to: 1.5 * rate })).toBeLessThan(1e-4);
  });

  test("takes a click apart as the circuit does: an answer that dies away", () => {
    const click = { left: new Float32Array(6000), right: new Float32Array(6000), rate };
    click.left[1000] = 0.1;
    const { left, right } = heard(click, each(highPass(60)));
    // one minus the low-pass: -a·e^(-a·n) after the click, a = 2π·60/48000
    const a = (2 * Math.PI * 60) / rate;
    for (const n of [10, 100, 400, 1000]) {
      const error = (left[1000 + n] ?? 0) + 0.1 * a * Math.exp(-a * n);
      expect(Math.abs(error)).toBeLessThan(1e-5);
    }
    expect(peak(right)).toBeLessThan(1e-9);
  });

  test("lets no steady offset through", () => {
    const steady = new Float32Array(2 * rate).fill(0.1);
    const { left } = heard({ left: steady, right: steady, rate }, each(highPass(60)));
    expect(peak(left.subarray(rate, (3 * rate) / 2))).toBeLessThan(0.1 / 60);
  });
});

describe("laws", () => {
  const gain = fc.double({ min: -2, max: 2, noNaN: true });
  const seeds = fc.nat({ max: 1000 });

  test("what two programmes make together is the sum of what they make alone", () => {
    fc.assert(
      fc.property(gain, gain, gain, gain, gain, gain, seeds, (a, b, ll, lr, rl, rr, seed) => {
        const chain: EarsAt = (at) => [
          [scale(highPass(300)(at), ll), scale(later(0.001)(at), lr)],
          [real(rl), scale(highPass(60)(at), rr)],
        ];
        const [one, other] = [noise(12_000, seed), noise(12_000, seed + 1)];
        const mixed = (x: Float32Array, y: Float32Array) =>
          x.map((v, n) => a * v + b * (y[n] ?? 0));
        const both = {
          left: mixed(one.left, other.left),
          right: mixed(one.right, other.right),
          rate,
        };
        const [first, second, sum] = [one, other, both].map((it) => heard(it, chain));
        if (first === undefined || second === undefined || sum === undefined) throw new Error();
        expect(difference(sum.left, mixed(first.left, second.left))).toBeLessThan(1e-6);
        expect(difference(sum.right, mixed(first.right, second.right))).toBeLessThan(1e-6);
      }),
      { numRuns: 20 },
    );
  });

  test("one chain after another is their product", () => {
    const twice = heard(heard(programme, each(highPass(400))), each(highPass(400)));
    const squared: EarsAt = each((at) => {
      const { re, im } = highPass(400)(at);
      return { re: re * re - im * im, im: 2 * re * im };
    });
    // But for half the rate, of which only the real part can be heard: in noise, a ten-thousandth.
    expect(difference(twice.left, heard(programme, squared).left)).toBeLessThan(2e-5);
  });
});
