import { describe, expect, test } from "vitest";
import type { Capture } from "#core/measurement/capture.ts";
import { measureReturn } from "#core/measurement/measured.ts";
import { seeded } from "#core/units/random.ts";
import { addNoise, captured, type Making, making, samplesOf } from "./made.ts";
import { measuredOf, noisy } from "./truth.ts";

const drifting: Making = { ...making, drift: 60 };
const clean = captured(48_000, samplesOf({ ...making, drift: 0 }));
const good = noisy(drifting, 40, 7);
const loud = noisy(drifting, 0, 7);

type Sample = (value: number, n: number, samples: Float32Array) => number;

const changed = ({ rate, channels }: Capture, change: Sample): Capture => ({
  rate,
  channels: channels.map((samples) => samples.map((value, n) => change(value, n, samples))),
});

const one = ({ channels }: Capture, at = 0): Float32Array => channels[at] ?? new Float32Array();
const dead = new Float32Array(one(good).length);
const without =
  (count: number, from = 150_000): Sample =>
  (value, n, samples) =>
    n < from ? value : (samples[n + count] ?? 0);
/** Nothing sounds there: between the stretches. */
const quiet = 276_000;

/** High tones go down after some time, as what takes noise away does to them. */
function suppressed(by: number): Capture {
  const part = (high: boolean) =>
    samplesOf({
      ...drifting,
      gain: (input, programme, frequency) => ({
        re: input === programme && frequency > 4000 === high ? 1 : 0,
        im: 0,
      }),
    });
  const [low, high] = [part(false), part(true)];
  const random = seeded(4);
  return captured(
    48_000,
    low.map((samples, input) =>
      addNoise(
        samples.map((value, n) => value + (high[input]?.[n] ?? 0) * (n < 120_000 ? 1 : by)),
        1e-4,
        random,
      ),
    ),
  );
}

const wandering = (wander: (time: number) => number): Capture =>
  noisy({ ...drifting, wander }, 40, 1);

const refused: readonly (readonly [string, string, () => Capture])[] = [
  ["rate", "a telephone's rate", () => ({ ...good, rate: 8000 })],
  ["not finite", "a sample that is none", () => changed(good, (x, n) => (n === 9 ? NaN : x))],
  ["silent", "nothing", () => changed(good, () => 0)],
  ["too quiet", "noise alone", () => noisy({ ...making, gain: () => ({ re: 0, im: 0 }) }, 40, 1)],
  ["too quiet", "25 dB under the noise", () => noisy(drifting, -25, 1)],
  ["cut short", "two halves", () => noisy({ ...making, delay: -3, duration: 5 }, 40, 1)],
  ["cut short", "the beginning", () => noisy({ ...making, duration: 4 }, 40, 1)],
  ["mono", "one channel twice", () => ({ ...good, channels: [one(good), one(good)] })],
  ["mono", "one channel on the left", () => ({ ...good, channels: [one(good), dead] })],
  ["mono", "one channel on the right", () => ({ ...good, channels: [dead, one(good)] })],
  ["clipped", "tops cut off", () => changed(good, (x) => Math.max(-0.1, Math.min(0.1, x)))],
  [
    "clipped",
    "an input far too loud",
    () => changed(good, (x) => Math.max(-1, Math.min(1, 20 * x))),
  ],
  ["gaps", "a sample missing", () => changed(good, without(1))],
  ["gaps", "a sample twice", () => changed(good, without(-1))],
  ["gaps", "a sample missing in the noise", () => changed(loud, without(1))],
  ["gaps", "ten milliseconds missing", () => changed(good, without(480))],
  ["gaps", "a whole round of a comb missing", () => changed(good, without(384))],
  ...[-4000, -2688, -1152, -384, -5, 5, 384, 3072].map(
    (count) =>
      [
        "gaps",
        `${count} samples missing between the stretches`,
        () => changed(good, without(count, quiet)),
      ] as const,
  ),
  ["gaps", "a round put in, in much noise", () => changed(loud, without(-384, quiet))],
  ["gaps", "a swell cut", () => changed(good, without(1200, 14_500 + 48_000))],
  [
    "gaps",
    "ten milliseconds silenced",
    () => changed(good, (x, n) => (n > 150_000 && n < 150_480 ? 0 : x)),
  ],
  [
    "gaps",
    "a third of a second silenced",
    () => changed(good, (x, n) => (n > 150_000 && n < 166_000 ? 0 : x)),
  ],
  ["clocks", "500 ppm", () => noisy({ ...making, drift: 500 }, 40, 1)],
  ["clocks", "a rate that changes", () => wandering((time) => 50e-6 * Math.max(0, time - 3.5))],
  ["clocks", "a rate that goes up and down", () => wandering((time) => 2e-5 * Math.sin(2 * time))],
  ["processed", "a gain that sinks", () => changed(good, (x, n) => x / (1 + n / 240_000))],
  ["processed", "a gain that jumps", () => changed(good, (x, n) => (n < 120_000 ? x : x / 2))],
  ["processed", "high tones taken away", () => suppressed(0.05)],
  ["processed", "high tones 3 dB down", () => suppressed(0.7)],
];

describe("is refused as", () => {
  test.for(refused)("%s: %s", ([word, , capture]) => {
    const result = measureReturn(capture());
    expect(result).toMatchObject({ refused: word });
    if (!("refused" in result)) return;
    expect(Number.isFinite(result.measured)).toBe(true);
    expect(Number.isFinite(result.bound)).toBe(true);
    expect(result.measured).not.toBe(result.bound);
  });
});

const step = (bits: number) => (x: number) => Math.round(x * 2 ** (bits - 1)) / 2 ** (bits - 1);

/** The one channel on both sides, as a mono wire of numbers gives it. */
const summed = (capture: Capture): Capture => ({
  ...capture,
  channels: [one(capture), one(capture)],
});

const accepted: readonly (readonly [string, () => Capture])[] = [
  ["nothing wrong", () => good],
  ["no noise at all", () => clean],
  ["no noise, one side lost", () => ({ ...clean, channels: [one(clean), dead] })],
  ["no noise, one wire for both", () => summed(clean)],
  ["16 bits", () => changed(clean, step(16))],
  ["16 bits, 60 dB down", () => changed(clean, (x) => step(16)(x / 1000))],
  ["16 bits, 60 dB down, one wire", () => summed(changed(clean, (x) => step(16)(x / 1000)))],
  ["a microsecond of wander", () => wandering((time) => 1e-6 * Math.sin(2 * time))],
  ["an offset", () => changed(good, (x) => x + 0.1)],
  ["noise as loud as the signal", () => loud],
  ["noise ten times as loud", () => noisy(drifting, -10, 3)],
  ["a gain that jumps by a hundredth", () => changed(good, (x, n) => (n < 120_000 ? x : 0.99 * x))],
  ["high tones untouched", () => suppressed(1)],
];

describe("is measured:", () => {
  test.for(accepted)("%s", ([, capture]) => {
    const result = measuredOf(measureReturn(capture()));
    expect(result.entries[0]?.[0]?.polarity).toBe(1);
  });
});

test("channels we should not have handed over are a mistake of ours", () => {
  expect(() => measureReturn({ rate: 48_000, channels: [] })).toThrow("0 channels");
  expect(() => measureReturn({ rate: 48_000, channels: [dead, dead, dead] })).toThrow("3 channels");
  expect(() => measureReturn({ rate: 48_000, channels: [dead, new Float32Array(9)] })).toThrow(
    "samples",
  );
});
