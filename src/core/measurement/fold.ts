import { raised } from "#core/signals/raised.ts";
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
 * Each end counts less and less over so many samples: what does not repeat, as images above the tones do not, would leak into everything at a sharp
 * end.
 */
const ramp = 1280;

/** What counts at a place of the second, over all turns: how many, their times and the squares of those, and the same of the values. */
interface Sums {
  readonly many: Float64Array;
  readonly times: Float64Array;
  readonly squares: Float64Array;
  readonly values: Float64Array;
  readonly moments: Float64Array;
}

/** One run of samples that count fully, from one up to another, all in one turn. */
function addRun(sums: Sums, samples: Float64Array, from: number, to: number, spot: Spot): void {
  const { many, times, squares, values, moments } = sums;
  const { turn } = spot;
  let { place } = spot;
  for (let n = from; n < to; n += 1) {
    const sample = samples[n] ?? 0;
    many[place] = (many[place] ?? 0) + 1;
    times[place] = (times[place] ?? 0) + turn;
    squares[place] = (squares[place] ?? 0) + turn * turn;
    values[place] = (values[place] ?? 0) + sample;
    moments[place] = (moments[place] ?? 0) + turn * sample;
    place = place + 1 === gridRate ? 0 : place + 1;
  }
}

interface Spot {
  readonly place: number;
  readonly turn: number;
}

/** One sample that counts in part. */
function addPart(sums: Sums, sample: number, weight: number, { place, turn }: Spot): void {
  const { many, times, squares, values, moments } = sums;
  many[place] = (many[place] ?? 0) + weight;
  times[place] = (times[place] ?? 0) + weight * turn;
  squares[place] = (squares[place] ?? 0) + weight * turn * turn;
  values[place] = (values[place] ?? 0) + weight * sample;
  moments[place] = (moments[place] ?? 0) + weight * turn * sample;
}

/**
 * Folds what lies between two instants of the signal's time. A part of a second may be there once more than the rest: each place has the
 * mean of what there is, so tones of whole hertz come out as they are, and nothing of the stretch is left out.
 */
export function fold({ channels, first }: Gridded, channel: number, from: Seconds, to: Seconds) {
  const samples = channels[channel] ?? new Float64Array();
  const begin = Math.max(0, Math.round(from * gridRate) - first);
  const end = Math.min(samples.length, Math.round(to * gridRate) - first);
  const sums: Sums = {
    many: new Float64Array(gridRate),
    times: new Float64Array(gridRate),
    squares: new Float64Array(gridRate),
    values: new Float64Array(gridRate),
    moments: new Float64Array(gridRate),
  };
  const spotOf = (n: number): Spot => ({
    place: wrapped(first + n, gridRate),
    turn: Math.floor((n - begin) / gridRate),
  });
  for (let n = begin; n < end; ) {
    const inside = Math.min(n - begin, end - 1 - n) + 0.5;
    if (inside < ramp) {
      addPart(sums, samples[n] ?? 0, raised(inside, ramp), spotOf(n));
      n += 1;
      continue;
    }
    const spot = spotOf(n);
    const stop = Math.min(end - ramp, begin + gridRate * (spot.turn + 1));
    addRun(sums, samples, n, stop, spot);
    n = stop;
  }
  return { ...folded(sums), middle: (first + (begin + end) / 2) / gridRate } satisfies Fold;
}

/** From sums to means and slopes: the straight line through the values of each place, over its turns. */
function folded({ many, times, squares, values, moments }: Sums) {
  let [ofMean, ofSlope] = [0, 0];
  for (let place = 0; place < gridRate; place += 1) {
    const [n, t, tt, y, ty] = [
      many[place] || 1,
      times[place] ?? 0,
      squares[place] ?? 0,
      values[place] ?? 0,
      moments[place] ?? 0,
    ];
    const spread = n * tt - t * t;
    values[place] = y / n;
    moments[place] = spread > 0 ? (n * ty - t * y) / spread : 0;
    ofMean += 1 / n;
    ofSlope += spread > 0 ? n / spread : 1e9;
  }
  return {
    mean: values,
    slope: moments,
    seconds: gridRate / ofMean,
    noisier: ofSlope / ofMean,
  };
}
