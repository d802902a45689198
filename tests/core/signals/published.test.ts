import FFT from "fft.js";
import { describe, expect, test } from "vitest";
import { lineIdent, stereoIdent } from "#core/signals/broken-tones.ts";
import { turnsAt } from "#core/signals/glide.ts";
import { comb, combFrequencies } from "#core/signals/multitone.ts";
import { pinkNoise, whiteNoise } from "#core/signals/noises.ts";
import { polarityPulse } from "#core/signals/polarity-pulse.ts";
import { renderSignal } from "#core/signals/render.ts";
import type { Signal } from "#core/signals/signal.ts";
import { addTones } from "#core/signals/tones.ts";

const rate = 48_000;

/** Where a channel is silent for longer than a hundredth of a second: first sample, and how many. */
function silences(channel: Float32Array): readonly (readonly [start: number, length: number])[] {
  const sounding = [...channel.keys()].filter((n) => Math.abs(channel[n] ?? 0) >= 1e-12);
  return sounding.flatMap((n, at) => {
    const next = sounding[at + 1] ?? channel.length;
    return next - n - 1 > rate / 100 ? [[n + 1, next - n - 1] as const] : [];
  });
}

/** Breaks within the signal, as instants of half the size: a swell of 5 ms goes half into each end of the silence. */
const breaks = (channel: Float32Array) =>
  silences(channel)
    .slice(0, -1)
    .map(([start, length]) => [start - 0.0025 * rate, length + 0.005 * rate]);

const near = (found: readonly (readonly number[])[], expected: readonly (readonly number[])[]) => {
  expect(found.length).toBe(expected.length);
  for (const [at, pair] of found.entries())
    for (const [index, samples] of pair.entries())
      expect(Math.abs(samples - (expected[at]?.[index] ?? 0))).toBeLessThanOrEqual(1);
};

/** Root mean square over one round, against the right channel's or a given one. */
function roundLevel(signal: Signal, side: "left" | "right"): number {
  const sound = renderSignal(signal, rate, 1);
  const { from, to } = signal.loop?.(rate) ?? { from: 0, to: 0 };
  const some = sound[side].subarray(from, to);
  return 10 * Math.log10(some.reduce((sum, x) => sum + x * x, 0) / some.length) - signal.level;
}

// EBU R49 as restated in EBU Tech 3304 (2009), section 2.1, and en.wikipedia.org/wiki/Glits; edges to the sample.
describe("the stereo identification of EBU R49", () => {
  const { left, right } = renderSignal(stereoIdent, rate, 1);

  test("the left has one break of 12 000 samples every 144 000; the right none", () => {
    near(
      breaks(left),
      [0, 1, 2, 3].map((at) => [rate + at * 144_000, 12_000]),
    );
    expect(breaks(right)).toEqual([]);
  });

  test("the broken leg is 0.378 dB below the continuous one", () => {
    expect(roundLevel(stereoIdent, "left")).toBeCloseTo(-0.378, 2);
    expect(roundLevel(stereoIdent, "right")).toBeCloseTo(0, 5);
  });

  test("a mono sum drops 6.02 dB in the break; with one leg upside down it is silent but in the breaks", () => {
    const whole = left.subarray(2 * rate, 3 * rate);
    const within = Math.round(1.05 * rate);
    for (const [at, x] of whole.entries()) expect(x - (right[2 * rate + at] ?? 0)).toBe(0);
    expect(left[within]).toBe(0);
    expect(Math.max(...right.subarray(within, within + 480))).toBeCloseTo(0.1258925, 5);
  });
});

// en.wikipedia.org/wiki/Glits: once on the left, and 250 ms later twice on the right, 250 ms each and apart; a cycle of 4 s.
describe("the two-channel line identification", () => {
  const { left, right } = renderSignal(lineIdent, rate, 1);

  test("one break on the left, two on the right, every 192 000 samples", () => {
    near(
      breaks(left),
      [0, 1, 2].map((at) => [rate + at * 192_000, 12_000]),
    );
    near(
      breaks(right),
      [0, 1, 2].flatMap((at) => [
        [rate + at * 192_000 + 24_000, 12_000],
        [rate + at * 192_000 + 48_000, 12_000],
      ]),
    );
  });

  test("the left is 0.280 dB, the right 0.580 dB below a tone that goes on", () => {
    expect(roundLevel(lineIdent, "left")).toBeCloseTo(-0.28, 2);
    expect(roundLevel(lineIdent, "right")).toBeCloseTo(-0.58, 2);
  });
});

// A. Farina, AES 108 (2000), as worked out at dsp.stackexchange.com/questions/88974.
test("an exponential sweep of a second from 20 Hz to 20 kHz makes 2892.4 turns and passes 632.46 Hz half way", () => {
  const glide = { from: 20, to: 20_000, length: 1 };
  expect(turnsAt(glide, 1)).toBeCloseTo(2892.4, 1);
  expect((turnsAt(glide, 0.5 + 1e-6) - turnsAt(glide, 0.5 - 1e-6)) / 2e-6).toBeCloseTo(632.46, 1);
});

describe("combs", () => {
  // D. J. Newman (1965), in dsp.stackexchange.com/questions/18862: consecutive harmonics, computed at 64 times the rate.
  test.for([
    [8, 1.853],
    [16, 1.814],
    [32, 1.758],
    [64, 1.712],
  ] as const)("%d tones of Newman's phases have a crest factor of %d", ([count, crest]) => {
    const wave = new Float32Array(64 * 2 * count);
    const tones = comb(1, 1, count).map((tone) => ({ ...tone, turns: (tone.turns ?? 0) + 0.25 }));
    addTones(wave, wave.length, tones, { start: -1, end: 2, swell: 0.01 });
    const mean = Math.sqrt(wave.reduce((sum, x) => sum + x * x, 0) / wave.length);
    expect(wave.reduce((most, x) => Math.max(most, Math.abs(x)), 0) / mean).toBeCloseTo(crest, 2);
  });

  test("no product of second or third order of one comb falls on a tone of the other", () => {
    const products = (own: readonly number[]) => {
      const [begin = 0] = own;
      const found = new Set<number>();
      // Every product is a sum of one, two or three tones, some turned round: a whole number of steps off these.
      for (const of of [2 * begin, 0, 3 * begin, begin, -begin])
        found.add(((of % 125) + 125) % 125);
      return found;
    };
    const { left, right } = combFrequencies;
    const leftStep = (left[0] ?? 0) % 125;
    const rightStep = (right[0] ?? 0) % 125;
    expect([...products(left)]).not.toContain(rightStep);
    expect([...products(right)]).not.toContain(leftStep);
  });
});

describe("noise", () => {
  const octaves = [63, 125, 250, 500, 1000, 2000, 4000, 8000];

  /** Decibels in each octave of one round. */
  function energies(signal: Signal): readonly number[] {
    const { left } = renderSignal(signal, rate, 1);
    const { from, to } = signal.loop?.(rate) ?? { from: 0, to: 0 };
    const count = to - from;
    const spectrum = new Float64Array(2 * count);
    new FFT(count).realTransform(
      spectrum as unknown as number[],
      Float64Array.from(left.subarray(from, to)) as unknown as number[],
    );
    const energyAt = (line: number) =>
      (spectrum[2 * line] ?? 0) ** 2 + (spectrum[2 * line + 1] ?? 0) ** 2;
    return octaves.map((middle) => {
      const [low, high] = [middle / Math.SQRT2, middle * Math.SQRT2].map((f) => (f * count) / rate);
      let energy = 0;
      for (let line = Math.ceil(low ?? 0); line < (high ?? 0); line += 1) energy += energyAt(line);
      return 10 * Math.log10(energy);
    });
  }

  // Pink noise: submitresponse.co.uk/sr/pn2.html.
  test("pink: octaves hold equal energy, so that its density falls 3.01 dB an octave", () => {
    const all = energies(pinkNoise);
    for (const one of all) expect(Math.abs(one - (all[0] ?? 0))).toBeLessThan(0.1);
  });

  test("white: each octave holds twice as much as the one below", () => {
    const all = energies(whiteNoise);
    for (const [at, one] of all.entries())
      expect(Math.abs(one - (all[0] ?? 0) - 10 * Math.log10(2) * at)).toBeLessThan(0.1);
  });
});

test("the polarity pulse is taller upwards than downwards by half, with no offset", () => {
  const { left } = renderSignal(polarityPulse, rate, 1);
  const [most, least] = [
    Math.max(...left.subarray(rate, 2 * rate)),
    Math.min(...left.subarray(rate, 2 * rate)),
  ];
  expect(most / -least).toBeGreaterThan(1.5);
  expect(
    Math.abs(left.subarray(rate, 2 * rate).reduce((sum, x) => sum + x, 0) / rate),
  ).toBeLessThan(1e-7);
});
