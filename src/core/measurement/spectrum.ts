import FFT from "fft.js";
import type { Complex } from "#core/units/complex.ts";
import { gridRate, period, periods, wrapped } from "./grid.ts";

/** Complex numbers in a row: real and imaginary parts. */
export interface Row {
  readonly re: Float64Array;
  readonly im: Float64Array;
}

export const row = (length: number): Row => ({
  re: new Float64Array(length),
  im: new Float64Array(length),
});

const fft = new FFT(period);
const [given, made] = [new Float64Array(2 * period), new Float64Array(2 * period)];

const turn = (part: number): Complex => ({
  re: Math.cos(2 * Math.PI * part),
  im: Math.sin(2 * Math.PI * part),
});

const downs = new Map<number, Row>();

/** What moves a frequency down to nothing, over one period; remembered, since a few frequencies are asked for over and over. */
function downBy(begin: number): Row {
  const known = downs.get(begin);
  if (known !== undefined) return known;
  const made = row(period);
  for (let p = 0; p < period; p += 1) {
    const { re, im } = turn((-begin * p) / gridRate);
    made.re[p] = re;
    made.im[p] = im;
  }
  downs.set(begin, made);
  return made;
}

/** The frequencies `begin`, `begin` + 125 Hz and so on, moved down by `begin` and folded into one period; the first sample is `first` of the grid. */
function folded(samples: Float64Array, first: number, begin: number): Row {
  const sum = row(period);
  eachPeriod(first, samples.length, begin, (n, place, count, { re, im }) => {
    for (let k = 0; k < count; k += 1) {
      const sample = samples[n + k] ?? 0;
      sum.re[place + k] = (sum.re[place + k] ?? 0) + sample * re;
      sum.im[place + k] = (sum.im[place + k] ?? 0) + sample * im;
    }
  });
  return sum;
}

/**
 * The peak and phase (of a cosine from the signal's beginning) of the frequencies `begin` + 125 k Hz, k from nothing up to `count`, in samples of
 * the grid. Exact for a whole number of seconds; for one comb alone, of periods.
 */
export function bins(samples: Float64Array, first: number, begin: number, count: number): Row {
  const { re, im } = folded(samples, first, begin);
  const by = downBy(begin);
  for (let p = 0; p < period; p += 1) {
    const [x, y, c, s] = [re[p] ?? 0, im[p] ?? 0, by.re[p] ?? 0, by.im[p] ?? 0];
    given[2 * p] = x * c - y * s;
    given[2 * p + 1] = x * s + y * c;
  }
  fft.transform(made as unknown as number[], given as unknown as number[]);
  const out = row(count);
  for (let k = 0; k < count; k += 1) {
    out.re[k] = (2 * (made[2 * k] ?? 0)) / samples.length;
    out.im[k] = (2 * (made[2 * k + 1] ?? 0)) / samples.length;
  }
  return out;
}

/** The samples of tones with such peaks and phases: their comb moved down, one period of it. The other way of `bins`. */
export function inTime(tones: Row): Row {
  given.fill(0);
  for (let k = 0; k < tones.re.length; k += 1) {
    given[2 * k] = (tones.re[k] ?? 0) * period;
    given[2 * k + 1] = (tones.im[k] ?? 0) * period;
  }
  fft.inverseTransform(made as unknown as number[], given as unknown as number[]);
  const out = row(period);
  for (let p = 0; p < period; p += 1) {
    out.re[p] = made[2 * p] ?? 0;
    out.im[p] = made[2 * p + 1] ?? 0;
  }
  return out;
}

/** Adds to samples of the grid those of a comb. */
export function addComb(samples: Float64Array, first: number, begin: number, tones: Row): void {
  const { re, im } = inTime(tones);
  const down = downBy(begin);
  for (let p = 0; p < period; p += 1) {
    const [x, y, c, s] = [re[p] ?? 0, im[p] ?? 0, down.re[p] ?? 0, -(down.im[p] ?? 0)];
    re[p] = x * c - y * s;
    im[p] = x * s + y * c;
  }
  eachPeriod(first, samples.length, begin, (n, place, count, by) => {
    for (let k = 0; k < count; k += 1) {
      const value = (re[place + k] ?? 0) * by.re + (im[place + k] ?? 0) * by.im;
      samples[n + k] = (samples[n + k] ?? 0) + value;
    }
  });
}

/** Goes through samples period by period of the grid, with where in a period each begins and what moves a frequency down there. */
function eachPeriod(
  first: number,
  length: number,
  begin: number,
  use: (n: number, place: number, count: number, by: Complex) => void,
): void {
  for (let n = 0; n < length; ) {
    const at = wrapped(first + n, gridRate);
    const place = at % period;
    const count = Math.min(period - place, length - n);
    use(n, place, count, turn(-(begin * Math.floor(at / period)) / periods));
    n += count;
  }
}
