import { renderedLevel } from "#core/signals/caps.ts";
import { fromDecibels } from "#core/units/decibels.ts";
import { type Random, seeded } from "#core/units/random.ts";
import type { Decibels, Hertz, Seconds } from "#core/units/units.ts";
import { between, frequencies, type Gains } from "./flex-leads.ts";

/** For some time the lead is otherwise. Times are those of the recording's clock, at the middle of the edges. */
export interface Fault {
  readonly at: Seconds;
  readonly lasts: Seconds;
  readonly gains: Gains;
  /** How long it takes to make or break; sharp where it is left out. */
  readonly edge?: Seconds;
}

export interface Stream {
  readonly rate: Hertz;
  readonly seconds: Seconds;
  readonly healthy: Gains;
  readonly faults?: readonly Fault[];
  /** The player's clock against the recorder's. */
  readonly ppm?: number;
  readonly delay?: Seconds;
  /** Of each channel, against its healthy signal. */
  readonly snr?: Decibels;
  readonly seed?: number;
  /** What else comes in, by channel and time; full scale is 1. */
  readonly beside?: (channel: number, time: Seconds) => number;
  readonly level?: Decibels;
}

/** One tone's peak: two of them have the rendered level. */
const peak = fromDecibels(renderedLevel);

/** What comes back, exactly: tones by the sine of their own time, each times what the lead does to it then. */
export function streamed(stream: Stream): readonly Float32Array[] {
  const { rate, seconds, healthy, faults = [], ppm = 0, delay = 0, level = 0, beside } = stream;
  const length = Math.round(seconds * rate);
  const random = seeded(stream.seed ?? 1);
  const loud = peak * fromDecibels(level);
  const waves = frequencies.map((frequency) =>
    wavesOf(frequency * (1 + ppm * 1e-6), rate, delay, length),
  );
  return healthy.map((row, channel) => {
    const samples = new Float32Array(length);
    const noise = noiseOf(stream, row, loud, random);
    for (let n = 0; n < length; n += 1) {
      const time = n / rate;
      const now = gainsAt(time, healthy, faults)[channel] ?? row;
      let sum = noise() + (beside?.(channel, time) ?? 0);
      for (let tone = 0; tone < 4; tone += 1) {
        const gain = now[tone] as Gains[number][number];
        const wave = waves[tone] as Waves;
        sum += loud * (gain.re * (wave.sine[n] ?? 0) + gain.im * (wave.cosine[n] ?? 0));
      }
      samples[n] = sum;
    }
    return samples;
  });
}

interface Waves {
  readonly sine: Float64Array;
  readonly cosine: Float64Array;
}

function wavesOf(frequency: Hertz, rate: Hertz, delay: Seconds, length: number): Waves {
  const waves = { sine: new Float64Array(length), cosine: new Float64Array(length) };
  for (let n = 0; n < length; n += 1) {
    const angle = 2 * Math.PI * ((frequency * (n / rate - delay)) % 1);
    waves.sine[n] = Math.sin(angle);
    waves.cosine[n] = Math.cos(angle);
  }
  return waves;
}

function noiseOf({ snr }: Stream, row: Gains[number], loud: number, random: Random) {
  if (snr === undefined) return () => 0;
  const power = row.reduce((sum, { re, im }) => sum + (loud ** 2 * (re * re + im * im)) / 2, 0);
  const normal = normals(random);
  const size = Math.sqrt(power) * fromDecibels(-snr);
  return () => size * normal();
}

/** Normal numbers of variance one (Box and Muller). */
export function normals(random: Random): () => number {
  let spare: number | undefined;
  return () => {
    if (spare !== undefined) {
      const kept = spare;
      spare = undefined;
      return kept;
    }
    const size = Math.sqrt(-2 * Math.log(1 - random()));
    const angle = 2 * Math.PI * random();
    spare = size * Math.sin(angle);
    return size * Math.cos(angle);
  };
}

function gainsAt(time: Seconds, healthy: Gains, faults: readonly Fault[]): Gains {
  for (const { at, lasts, gains, edge = 0 } of faults) {
    if (time < at - edge / 2 || time >= at + lasts + edge / 2) continue;
    if (edge === 0) return gains;
    const share = Math.min((time - at) / edge + 0.5, (at + lasts - time) / edge + 0.5, 1);
    return between(healthy, gains, share);
  }
  return healthy;
}
