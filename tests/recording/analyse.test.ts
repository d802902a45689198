import { describe, expect, test } from "vitest";
import wavefile from "wavefile";
import { multitone } from "#core/signals/multitone.ts";
import { renderSignal } from "#core/signals/render.ts";
import { seeded } from "#core/units/random.ts";
import { type Analysed, type Analysis, analyseRecording } from "#recording/analyse.ts";
import { english } from "#recording/english.ts";
import type { Slices } from "#recording/slices.ts";
import { troubleText } from "#recording/words.ts";
import { chunk, format, letters, number, riff } from "./made.ts";
import { inMemory } from "./slices.ts";

const rate = 44_100;
const { left, right } = renderSignal(multitone, rate, 1);
const random = seeded(3);

function put(channel: Float32Array, samples: Float32Array, from: number): void {
  const cut = samples.subarray(Math.max(0, -from), channel.length - from);
  for (const [n, sample] of cut.entries()) {
    const place = Math.max(0, from) + n;
    channel[place] = (channel[place] ?? 0) + sample;
  }
}

/** Channels of so many seconds, hissing, with the signal put in at some times. */
const channelsOf = (seconds: number, sources: readonly Float32Array[], at: readonly number[]) =>
  sources.map((source) => {
    const channel = Float32Array.from({ length: seconds * rate }, () => 2e-4 * (random() - 0.5));
    for (const start of at) put(channel, source, Math.round(start * rate));
    return channel;
  });

/** A file of 32-bit floats. */
function fileOf(channels: readonly Float32Array[]): Slices {
  const samples = new Float32Array(channels.length * (channels[0]?.length ?? 0));
  for (const [at, channel] of channels.entries())
    for (const [n, sample] of channel.entries()) samples[channels.length * n + at] = sample;
  const said = format({ code: 3, bits: 32, channels: channels.length, rate });
  const head = riff([...said, ...letters("data"), ...number(4 * samples.length, 4)]);
  const bytes = new Uint8Array(head.length + 4 * samples.length);
  bytes.set(head);
  bytes.set(new Uint8Array(samples.buffer), head.length);
  return inMemory(bytes).slices;
}

/** A file of whole numbers of so many bits. */
function wholeNumbers(channels: readonly Float32Array[], bits: number): Slices {
  const off = bits === 8 ? 128 : 0;
  const whole = (x: number) => Math.round(x * 2 ** (bits - 1)) + off;
  const file = new wavefile.WaveFile();
  file.fromScratch(
    channels.length,
    rate,
    `${bits}`,
    channels.map((one) => [...one].map(whole)),
  );
  return inMemory(file.toBuffer()).slices;
}

async function ended(slices: Slices): Promise<Analysis> {
  const working = analyseRecording(slices);
  for (;;) {
    const { done, value } = await working.next();
    if (done) return value;
  }
}

async function analysed(slices: Slices): Promise<Analysed> {
  const analysis = await ended(slices);
  if ("trouble" in analysis) throw new Error(troubleText(english, analysis));
  return analysis;
}

describe("our signal in a recording", () => {
  test.for([8, 16, 24])("written as %d bits is found and measured", async (bits) => {
    const turned = right.map((x) => -0.5 * x);
    const file = wholeNumbers(channelsOf(11, [left, turned], [1]), bits);
    const { playings, found } = await analysed(file);
    expect(found).toBe(1);
    const [{ measured } = { measured: undefined }] = playings;
    if (measured === undefined || "refused" in measured) throw new Error(JSON.stringify(measured));
    const [[ll] = [], [, rr] = []] = measured.entries;
    expect([ll?.polarity, rr?.polarity]).toEqual([1, -1]);
    expect(Math.abs(ll?.level ?? 9)).toBeLessThan(bits === 8 ? 0.05 : 0.002);
    expect(Math.abs((rr?.level ?? 9) + 6.02)).toBeLessThan(bits === 8 ? 0.05 : 0.002);
  });

  test("each of two playings is measured by itself, when it is", async () => {
    const { found, playings } = await analysed(fileOf(channelsOf(32, [left, right], [3, 20])));
    expect(found).toBe(2);
    const starts = playings.map(
      ({ from, measured }) => "delay" in measured && from + measured.delay.value,
    );
    for (const [at, start] of [3, 20].entries()) expect(starts[at]).toBeCloseTo(start, 6);
  });

  test("one that began before the recording is measured by what is there", async () => {
    const { playings } = await analysed(fileOf(channelsOf(12, [left, right], [-3])));
    expect(playings).toMatchObject([{ from: 0, measured: { stretches: "second" } }]);
  });

  test("one channel alone is measured as one", async () => {
    const { playings } = await analysed(fileOf(channelsOf(11, [left], [0.5])));
    expect(playings).toMatchObject([{ channels: [1], measured: { stretches: "both" } }]);
    const [{ measured } = { measured: undefined }] = playings;
    expect(measured && "entries" in measured && measured.entries.length).toBe(1);
  });

  test("samples that are no numbers are silence, and told of", async () => {
    const channels = channelsOf(12, [left, right], [1]);
    channels[0]?.fill(Number.NaN, 100, 200);
    expect(await analysed(fileOf(channels))).toMatchObject({ odd: ["not numbers"], found: 1 });
  });
});

describe("what stops it", () => {
  test.for([4000, 1_000_000])("a rate of %d Hz", async (odd) => {
    const bytes = riff([...format({ rate: odd }), ...chunk("data", [0, 64, 0, 192])]);
    const analysis = await ended(inMemory(bytes).slices);
    expect(analysis).toEqual({ trouble: "rate", found: { rate: odd } });
    if ("trouble" in analysis) expect(troubleText(english, analysis)).toContain(`${odd} Hz`);
  });

  test("a disk that goes away, at whichever reading", async () => {
    const whole = fileOf(channelsOf(11, [left, right], [0.5]));
    let reads = 0;
    const counting: Slices = {
      size: whole.size,
      read: (from, to) => {
        reads += 1;
        return whole.read(from, to);
      },
    };
    await ended(counting);
    expect(reads).toBeGreaterThan(8);
    for (let last = 0; last < reads; last += 1) {
      let left = last;
      const going: Slices = {
        size: whole.size,
        read: (from, to) => {
          left -= 1;
          return left < 0 ? Promise.reject(new Error("gone")) : whole.read(from, to);
        },
      };
      expect(await ended(going)).toEqual({ trouble: "cannot be read" });
    }
  });

  test("whoever asks no more: nothing more is read", async () => {
    const file = fileOf(channelsOf(11, [left, right], [0.5]));
    const { slices, asked } = inMemory(await file.read(0, file.size));
    const working = analyseRecording(slices);
    await working.next();
    const { reads } = asked;
    await working.return({ trouble: "empty", found: undefined });
    expect((await working.next()).done).toBe(true);
    expect(asked.reads).toBe(reads);
  });
});
