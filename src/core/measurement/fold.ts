import type { Seconds } from "#core/units/units.ts";
import { type Gridded, gridRate, wrapped } from "./grid.ts";

/** A stretch of whole and part seconds laid over each other: what repeats every second, and how it changes from one to the next. */
export interface Fold {
  /** The mean over the seconds, a second of it from a whole second of the signal. */
  readonly mean: Float64Array;
  /** By how much it grows a second, where two or more lie over each other. */
  readonly slope: Float64Array;
  /** The middle of what was folded, in the signal's time. */
  readonly middle: Seconds;
  /** How many seconds that are all there would have as much noise in their mean. */
  readonly seconds: Seconds;
  /** How much larger the power of noise is in the slope than in the mean. */
  readonly noisier: number;
}

/**
 * Folds what lies between two instants of the signal's time. A part of a second may be there once more than the rest: each place has the
 * mean of what there is, so tones of whole hertz come out as they are, and nothing of the stretch is left out.
 */
export function fold({ channels, first }: Gridded, channel: number, from: Seconds, to: Seconds) {
  const samples = channels[channel] ?? new Float64Array();
  const begin = Math.max(0, Math.round(from * gridRate) - first);
  const end = Math.min(samples.length, Math.round(to * gridRate) - first);
  const [sum, moment] = [new Float64Array(gridRate), new Float64Array(gridRate)];
  for (let n = begin, place = wrapped(first + begin, gridRate), turn = 0; n < end; n += 1) {
    const sample = samples[n] ?? 0;
    sum[place] = (sum[place] ?? 0) + sample;
    moment[place] = (moment[place] ?? 0) + turn * sample;
    place = place + 1 === gridRate ? 0 : place + 1;
    if (n - begin === gridRate * (turn + 1) - 1) turn += 1;
  }
  const noise = scale(sum, moment, wrapped(first + begin, gridRate), end - begin);
  const middle = (first + (begin + end) / 2) / gridRate;
  return { mean: sum, slope: moment, middle, ...noise } satisfies Fold;
}

/** From sums to means and slopes: a place that is there `many` times was summed with 0, 1, ... as its time. */
function scale(sum: Float64Array, moment: Float64Array, begin: number, length: number) {
  let [ofMean, ofSlope] = [0, 0];
  for (let n = 0, place = begin; n < gridRate; n += 1) {
    const many = Math.max(1, Math.ceil((length - n) / gridRate));
    const mean = (sum[place] ?? 0) / many;
    const spread = (many * (many * many - 1)) / 12;
    moment[place] =
      spread > 0 ? ((moment[place] ?? 0) - (mean * many * (many - 1)) / 2) / spread : 0;
    sum[place] = mean;
    ofMean += 1 / many;
    ofSlope += spread > 0 ? 1 / spread : 1e9;
    place = place + 1 === gridRate ? 0 : place + 1;
  }
  return { seconds: gridRate / ofMean, noisier: ofSlope / ofMean };
}
