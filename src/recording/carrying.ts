import { combFrequencies } from "#core/signals/multitone.ts";
import { usable } from "#core/signals/tones.ts";
import type { Hertz, Seconds } from "#core/units/units.ts";
import { type Part, partOf } from "./blocks.ts";
import type { Layout } from "./layout.ts";
import type { Slices } from "./slices.ts";
import type { Trouble } from "./trouble.ts";

/** So many short pieces of the signal are looked at, each so many seconds long: a clock wrong by 300 ppm moves no tone out of its place. */
const pieces = 16;
const long: Seconds = 0.25;
/** Tones are judged in groups of so many, neighbours: behind a filter a few may be all that comes through. */
const group = 10;
/** Of the power on and beside a tone so much lies on it, in the mean of a group. In noise half of it would, by three hundredths more or less. */
const onTones = 0.7;
/** The second channel has so much of the power of the first; what has less is crosstalk. */
const share = 1e-4;

/** Every third tone of both combs: enough to know them by. */
const tones = [...combFrequencies.left, ...combFrequencies.right]
  .sort((a, b) => a - b)
  .filter((_, at) => at % 3 === 0);
/** From a tone to the middle between it and the next of the other comb. */
const aside: Hertz = 31;

/** Samples under a raised cosine. */
const weighted = (samples: Float32Array): Float64Array =>
  Float64Array.from(
    samples,
    (sample, n) => sample * (1 - Math.cos((2 * Math.PI * n) / samples.length)),
  );

/** The power of one frequency, given in turns a sample (the recurrence of G. Goertzel, 1958). */
function powerAt(samples: Float64Array, turns: number): number {
  const by = 2 * Math.cos(2 * Math.PI * turns);
  let [last, before] = [0, 0];
  for (const sample of samples) {
    const next = sample + by * last - before;
    before = last;
    last = next;
  }
  return last ** 2 + before ** 2 - by * last * before;
}

/** Powers on the tones and beside them, tone by tone. */
interface Powers {
  readonly on: readonly number[];
  readonly beside: readonly number[];
}

const total = (powers: readonly number[]): number => powers.reduce((sum, one) => sum + one, 0);
const added = (one: readonly number[], other: readonly number[]): readonly number[] =>
  one.map((power, at) => power + (other[at] ?? 0));

function powersOf(samples: Float32Array, rate: Hertz): Powers {
  const piece = weighted(samples);
  const heard = tones.filter((tone) => tone + aside < usable * rate);
  const powers = (by: Hertz) => heard.map((tone) => powerAt(piece, (tone + by) / rate));
  return { on: powers(0), beside: powers(aside) };
}

/** Whether the tones of some group stand out: one that is loud by itself, as of a voice, counts no more than another. */
function isOurs({ on, beside }: Powers): boolean {
  const shares = on.map((power, at) => power / (power + (beside[at] ?? 0) || 1));
  return shares.some(
    (_, at) =>
      at % group === 0 &&
      at + group <= shares.length &&
      meanOf(shares.slice(at, at + group)) > onTones,
  );
}

const meanOf = (shares: readonly number[]): number => total(shares) / shares.length;

/** The two channels that carry most of our signal, or the one, in their order. */
function strongest(powers: readonly Powers[]): readonly number[] {
  const ranked = powers
    .map((one, channel) => ({
      channel,
      is: isOurs(one),
      signal: total(one.on) - total(one.beside),
    }))
    .sort((a, b) => Number(b.is) - Number(a.is) || b.signal - a.signal);
  const [first, second] = ranked;
  const both = second?.is && second.signal > share * (first?.signal ?? 0);
  return (both ? ranked.slice(0, 2) : ranked.slice(0, 1))
    .map(({ channel }) => channel)
    .sort((a, b) => a - b);
}

/** Which channels of a file are left and right of what it holds from one sample up to another: of two or fewer all, of more those that carry most of our signal. */
export async function carrying(
  slices: Slices,
  layout: Layout,
  { from, to, channels }: Part,
): Promise<readonly number[] | Trouble> {
  if (channels.length <= 2) return channels;
  const frames = Math.min(to - from, Math.round(long * layout.rate));
  let powers: readonly Powers[] = [];
  for (let piece = 0; piece < pieces; piece += 1) {
    const at = from + Math.floor(((to - from - frames) * (piece + 0.5)) / pieces);
    const samples = await partOf(slices, layout, { from: at, to: at + frames, channels });
    if ("trouble" in samples) return samples;
    powers = samples.map((one, channel) => {
      const [{ on, beside }, before] = [powersOf(one, layout.rate), powers[channel]];
      return { on: added(on, before?.on ?? []), beside: added(beside, before?.beside ?? []) };
    });
  }
  return strongest(powers).map((at) => channels[at] ?? at);
}
