import { describe, expect, test } from "vitest";
import { pairOrder } from "#core/signals/burst-pair.ts";
import { capWindow, levelCap, peakCap } from "#core/signals/caps.ts";
import { type SignalName, signalNames, signals } from "#core/signals/catalogue.ts";
import { render } from "#core/signals/render.ts";
import type { Sound } from "#core/signals/sound.ts";
import { toDecibels } from "#core/units/decibels.ts";
import { energyBetween } from "./spectrum.ts";

const rates = [8000, 11_025, 44_100, 48_000, 96_000, 192_000];
/** What is made of frozen noise: exact in every stretch. */
const sounding = ["left-ident", "right-ident", "burst-pair"] as const;

const rms = (samples: Float32Array) =>
  toDecibels(Math.sqrt(samples.reduce((sum, x) => sum + x * x, 0) / samples.length));
const peak = (samples: Float32Array) =>
  toDecibels(samples.reduce((most, x) => Math.max(most, Math.abs(x)), 0));
const mean = (samples: Float32Array) => samples.reduce((sum, x) => sum + x, 0) / samples.length;

const nothing = { samples: new Float32Array() };

/** The samples of each stretch of a signal, on both channels. */
function stretchesOf(name: SignalName, sound: Sound, seed = 1) {
  return signals[name].stretches(seed).map(({ start, end, left, right }) => {
    const first = Math.round(start * sound.rate);
    const last = first + Math.round((end - start) * sound.rate);
    return {
      left: { polarity: left, samples: sound.left.subarray(first, last) },
      right: { polarity: right, samples: sound.right.subarray(first, last) },
    };
  });
}

/** The same, each channel for itself. */
const channelsOf = (name: SignalName, sound: Sound) =>
  stretchesOf(name, sound).flatMap(({ left, right }) => [left, right]);

const same = (one: Float32Array, other: Float32Array | undefined) =>
  one.length === other?.length && one.every((x, n) => x === other[n]);

describe.for(rates)("at %d Hz", (rate) => {
  /** The long ones at the usual rates alone: they take a second each at the highest. */
  const names = rate > 48_000 ? [...sounding, "silence" as const] : signalNames;

  test.for(names)("%s fills both channels for as long as it says", (name) => {
    const { left, right } = render(name, rate, 1);
    expect(left.length).toBe(Math.round(signals[name].duration * rate));
    expect(right.length).toBe(left.length);
  });

  test.for(sounding)("%s sounds at its level, below its peak and without offset", (name) => {
    const channels = channelsOf(name, render(name, rate, 1)).filter((it) => it.polarity !== 0);
    expect(channels.length).toBeGreaterThan(1);
    for (const { samples } of channels) {
      expect(rms(samples)).toBeCloseTo(signals[name].level, 5);
      expect(peak(samples)).toBeLessThan(signals[name].peak);
      expect(Math.abs(mean(samples))).toBeLessThan(1e-8);
      expect(Math.abs(samples[0] ?? 1)).toBeLessThan(1e-3);
      expect(Math.abs(samples.at(-1) ?? 1)).toBeLessThan(1e-3);
    }
  });

  test.for(names)("%s is silent wherever it says nothing sounds", (name) => {
    const sound = render(name, rate, 1);
    for (const { samples, polarity } of channelsOf(name, sound)) if (polarity) samples.fill(0);
    // The first or last sample of a ramp may fall half a sample outside.
    expect(peak(sound.left)).toBeLessThan(-90);
    expect(peak(sound.right)).toBeLessThan(-90);
  });
});

describe("spectrum", () => {
  const rate = 44_100;
  const bands = {
    "left-ident": [200, 4000],
    "right-ident": [200, 4000],
    "burst-pair": [150, 1000],
  };

  test.for(sounding)("%s keeps all but a thousandth of its energy in its band", (name) => {
    const [low = 0, high = 0] = bands[name];
    const [first] = stretchesOf(name, render(name, rate, 1));
    const { samples } = first?.[name === "right-ident" ? "right" : "left"] ?? nothing;
    const energy = (from: number, to: number) => energyBetween(samples, rate, from, to);
    const inside = energy(low, high);
    expect(inside).toBeGreaterThan(0);
    expect((energy(0, low) + energy(high, rate / 2)) / inside).toBeLessThan(1e-3);
    expect((energy(0, low / 2) + energy(high * 2, rate / 2)) / inside).toBeLessThan(1e-5);
  });

  test("the burst falls 3 dB an octave: octaves hold equal energy", () => {
    const [first] = stretchesOf("burst-pair", render("burst-pair", rate, 1));
    const { samples } = first?.left ?? nothing;
    const octave = (low: number) => 10 * Math.log10(energyBetween(samples, rate, low, 2 * low));
    expect(Math.abs(octave(200) - octave(400))).toBeLessThan(0.5);
    expect(Math.abs(octave(180) - octave(360))).toBeLessThan(0.5);
  });
});

describe("the idents", () => {
  const left = stretchesOf("left-ident", render("left-ident", 48_000, 1));
  const right = stretchesOf("right-ident", render("right-ident", 48_000, 2));

  test("are one knock, sample for sample, on one channel each", () => {
    const knock = left[0]?.left.samples;
    for (const it of left) expect(same(it.left.samples, knock)).toBe(true);
    for (const it of right) expect(same(it.right.samples, knock)).toBe(true);
    const sides = [...left, ...right].map((it) => [it.left.polarity, it.right.polarity]);
    expect(sides).toEqual([...Array(2).fill([1, 0]), ...Array(4).fill([0, 1])]);
  });

  test("differ in rhythm: one and one, two and two", () => {
    expect([left.length, right.length]).toEqual([2, 4]);
    const gaps = signals["right-ident"]
      .stretches(1)
      .map(({ start }, at, all) => start - (all[at - 1]?.end ?? start));
    expect(gaps.map((gap) => gap > 0.2)).toEqual([false, false, true, false]);
  });
});

describe("the pair", () => {
  test("has both channels equal in magnitude, once in phase and once opposite, in the seeded order", () => {
    for (const seed of [1, 2, 3, 4, 5, 6, 7, 8]) {
      const sound = render("burst-pair", 16_000, seed);
      const signs = stretchesOf("burst-pair", sound, seed).map(({ left, right }) =>
        Math.sign(left.samples.reduce((sum, x, n) => sum + x * (right.samples[n] ?? 0), 0)),
      );
      expect(signs).toEqual(pairOrder(seed) === "in phase first" ? [1, -1] : [-1, 1]);
      expect(same(sound.left.map(Math.abs), sound.right.map(Math.abs))).toBe(true);
    }
  });

  test("comes in either order about half of the time", () => {
    const seeds = Array.from({ length: 1000 }, (_, seed) => seed);
    const ahead = seeds.filter((seed) => pairOrder(seed) === "in phase first").length;
    expect(ahead).toBeGreaterThan(440);
    expect(ahead).toBeLessThan(560);
  });
});

describe("rendering", () => {
  test.for(signalNames)("%s: the same seed gives the same samples", (name) => {
    const [one, other] = [render(name, 48_000, 7), render(name, 48_000, 7)];
    expect(same(one.left, other.left) && same(one.right, other.right)).toBe(true);
  });

  test("refuses a rate at which the band does not fit", () => {
    expect(() => render("silence", 7999, 1)).toThrow(RangeError);
    expect(() => render("silence", Number.NaN, 1)).toThrow(RangeError);
  });

  test("leaves room: raised to the level cap, every peak is still below the peak cap", () => {
    for (const name of signalNames.filter((one) => one !== "silence"))
      expect(signals[name].peak + levelCap - signals[name].level).toBeLessThan(peakCap);
    expect(capWindow).toBeLessThan(0.45); // a burst fills it: its level is what the cap is about
  });
});
