import FFT from "fft.js";
import { raised } from "#core/signals/raised.ts";
import { type Complex, real } from "#core/units/complex.ts";
import type { Matrix } from "#core/units/matrix.ts";
import type { Hertz, Seconds } from "#core/units/units.ts";
import type { Work } from "./work.ts";

/**
 * What a chain does at a frequency: its ear matrix, rows the ears, columns the programme, left first. Asked for above zero
 * (0.06 Hz or so) up to half the sampling rate, a few hertz apart: some thousand times.
 */
export type EarsAt = (at: Hertz) => Matrix;

/**
 * A chain's answer to a click is taken to be over within this, give or take a power of two: enough for a corner at 20 Hz and
 * for a tenth of a second between the sides. What lasts longer comes out at the beginning again.
 */
const span: Seconds = 1 / 8;
/** This part of the answer may come before the click: a phase that turns back is no cause for alarm. */
const early = 1 / 8;
/** Direct current is asked for at this part of the lowest frequency, since no capacitor has an answer at zero. */
const nearZero = 1 / 100;
/** Frequencies asked for between two words of progress. */
const atOnce = 8;

/**
 * A chain ready to be heard. Left and right are taken as one complex number, left + i·right; then any two by two matrix is
 * z -> straight·z + turned·conj(z), and one transform does both sides.
 */
export interface Response {
  /** Of twice as many points as there are taps. */
  readonly fft: FFT;
  readonly taps: number;
  /** So many samples too late. */
  readonly late: number;
  /** Spectra over the points of `fft`: real and imaginary parts in turn. */
  readonly straight: Float64Array;
  readonly turned: Float64Array;
}

/**
 * The response of a chain at a sampling rate: exactly the chain's own at every frequency it was asked for; of direct current
 * and of half the rate the real part, since samples know no other.
 * @throws RangeError where the chain gives no two by two matrix of finite gains
 */
export function* responseOf(at: EarsAt, rate: Hertz): Work<Response> {
  const taps = 2 ** Math.ceil(Math.log2(Math.max(64, rate * span)));
  const half = taps / 2;
  const straight = new Float64Array(2 * taps);
  const turned = new Float64Array(2 * taps);
  for (let bin = 0; bin <= half; bin += 1) {
    const gains = gainsOf(at, ((bin || nearZero) * rate) / taps);
    const usable = bin === 0 || bin === half ? gains.map(({ re }) => real(re)) : gains;
    put(usable, bin, 1, straight, turned);
    put(usable, (taps - bin) % taps, -1, straight, turned);
    if (bin % atOnce === 0) yield bin / half;
  }
  const late = taps * early;
  const [small, fft] = [new FFT(taps), new FFT(2 * taps)];
  const padded = (spectrum: Float64Array) => inTime(spectrum, late, small, fft);
  return { fft, taps, late, straight: padded(straight), turned: padded(turned) };
}

type Gains = readonly [ll: Complex, lr: Complex, rl: Complex, rr: Complex];

function gainsOf(at: EarsAt, frequency: Hertz): Complex[] {
  const matrix = at(frequency);
  const gains = matrix.flat();
  const square = matrix.length === 2 && matrix.every((row) => row.length === 2);
  if (square && gains.every(({ re, im }) => Number.isFinite(re + im))) return gains;
  throw new RangeError(
    `no two by two finite gains at ${frequency} Hz but ${JSON.stringify(matrix)}`,
  );
}

/** Puts the gains at a bin, or (`sign` -1) those of the frequency below zero, which are conjugate. */
function put(
  gains: readonly Complex[],
  bin: number,
  sign: 1 | -1,
  straight: Float64Array,
  turned: Float64Array,
): void {
  const [ll, lr, rl, rr] = gains as Gains;
  straight[2 * bin] = (ll.re + rr.re - sign * (rl.im - lr.im)) / 2;
  straight[2 * bin + 1] = (sign * (ll.im + rr.im) + rl.re - lr.re) / 2;
  turned[2 * bin] = (ll.re - rr.re - sign * (rl.im + lr.im)) / 2;
  turned[2 * bin + 1] = (sign * (ll.im - rr.im) + rl.re + lr.re) / 2;
}

/**
 * A spectrum's answer to a click, later by `late`, with as many zeros after it: its spectrum. Both ends taper off: what rings
 * on at half the rate, as a delay of part of a sample does, would else be heard everywhere for having been cut.
 */
function inTime(spectrum: Float64Array, late: number, small: FFT, large: FFT): Float64Array {
  const answer = new Float64Array(spectrum.length);
  small.inverseTransform(answer, spectrum);
  const taps = answer.length / 2;
  const padded = new Float64Array(2 * answer.length);
  for (let n = 0; n < taps; n += 1) {
    const from = 2 * ((n + taps - late) % taps);
    const taper = raised(2 * n, late) * raised(2 * (taps - n), late);
    padded[2 * n] = (answer[from] ?? 0) * taper;
    padded[2 * n + 1] = (answer[from + 1] ?? 0) * taper;
  }
  const result = new Float64Array(padded.length);
  large.transform(result, padded);
  return result;
}
