import { describe, expect, test } from "vitest";
import { measureReturn } from "#core/measurement/measured.ts";
import { fromDecibels, toDecibels } from "#core/units/decibels.ts";
import { seeded } from "#core/units/random.ts";
import { addNoise, captured, making, samplesOf } from "./made.ts";
import { measuredOf, sentLevel } from "./truth.ts";

const rootMeanSquare = (samples: Float64Array): number =>
  Math.sqrt(samples.reduce((sum, x) => sum + x * x, 0) / samples.length);

const drifting = { ...making, drift: 60 };
const clean = samplesOf(drifting);

/** Hum with its second and third harmonic, 6 and 10 dB down, and noise 40 dB under the tones. */
function humming(mains: number, level: number) {
  const random = seeded(mains);
  const peak = Math.SQRT2 * fromDecibels(level);
  const channels = clean.map((samples, input) => {
    const hum = samples.map((value, n) => {
      const angle = (2 * Math.PI * mains * n) / drifting.rate + input;
      const wave = Math.sin(angle) + 0.5 * Math.sin(2 * angle + 1) + 0.316 * Math.sin(3 * angle);
      return value + peak * wave;
    });
    return addNoise(hum, sentLevel / 100, random);
  });
  return measuredOf(measureReturn(captured(drifting.rate, channels)));
}

describe.for([
  [50, -40],
  [50.1, -60],
  [49.95, -50],
  [59.9, -50],
  [60.04, -20],
] as const)("hum of %d Hz at %d dBFS", ([mains, level]) => {
  const result = humming(mains, level);

  test("is read within half a decibel, with its harmonics", () => {
    for (const { hum } of result.inputs) {
      expect(hum?.mains).toBe(Math.round(mains / 10) * 10);
      for (const [at, under] of [0, 6.02, 10.01].entries())
        expect(Math.abs((hum?.levels[at] ?? 99) - level + under)).toBeLessThan(0.5);
    }
  });

  test("is no crosstalk, and no noise", () => {
    for (const [input, row] of result.entries.entries()) {
      expect(row[input]?.level).toBeCloseTo(0, 1);
      expect(row[1 - input]?.carried).toBe(false);
      expect(row[1 - input]?.level).toBeLessThan(-60);
    }
  });
});

test("without hum none is read, and the noise is right", () => {
  const random = seeded(2);
  const noise = sentLevel / 1000;
  const channels = clean.map((samples) => addNoise(samples.slice(), noise, random));
  const { inputs } = measuredOf(measureReturn(captured(drifting.rate, channels)));
  // Up to the highest tone, of noise up to half the rate.
  const right = toDecibels(noise * Math.sqrt(15_037 / 24_000));
  for (const input of inputs) {
    expect(input.hum).toBeUndefined();
    expect(Math.abs(input.noise - right)).toBeLessThan(0.5);
    expect(input.tones).toBeCloseTo(toDecibels(sentLevel), 1);
  }
});

/** At 96 kHz no product of the third order folds. */
const fast = samplesOf({ ...drifting, rate: 96_000 });

/** How a bent wave differs from the wave, whatever the gain and the offset. */
function bent(power: 2 | 3) {
  const [samples = new Float64Array()] = fast;
  const wave = samples.subarray(3 * 96_000, 5 * 96_000);
  const curve = wave.map((x) => x ** power);
  const offset = curve.reduce((sum, x) => sum + x, 0) / curve.length;
  const own = wave.reduce((sum, x) => sum + x * x, 0);
  const gain = curve.reduce((sum, x, n) => sum + x * (wave[n] ?? 0), 0) / own;
  const rest = curve.map((x, n) => x - (power === 2 ? offset : 0) - gain * (wave[n] ?? 0));
  return rootMeanSquare(rest) / rootMeanSquare(wave);
}

describe.for([2, 3] as const)("0.3 % of distortion of order %d", (power) => {
  const by = 0.003 / bent(power);
  const random = seeded(power);
  const channels = fast.map((samples) =>
    addNoise(
      samples.map((x) => x + by * x ** power),
      sentLevel / 10_000,
      random,
    ),
  );
  const result = measuredOf(measureReturn(captured(96_000, channels)));

  test("reads as such", () => {
    for (const { distortion } of result.inputs) {
      const { second, third } = distortion ?? {};
      const [own, other] = power === 2 ? [second, third] : [third, second];
      expect(own?.value).toBeGreaterThan(0.0027);
      expect(own?.value).toBeLessThan(0.0033);
      expect(other?.value).toBeLessThan(0.0003);
    }
  });

  test("is no crosstalk, and no noise", () => {
    for (const [input, row] of result.entries.entries()) {
      expect(row[1 - input]?.level).toBeLessThan(-80);
      expect(result.inputs[input]?.noise).toBeLessThan(-100);
    }
  });
});
