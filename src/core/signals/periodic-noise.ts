import FFT from "fft.js";
import { fromDecibels } from "#core/units/decibels.ts";
import { seeded } from "#core/units/random.ts";
import type { Decibels, DecibelsFullScale, Hertz, Seconds } from "#core/units/units.ts";
import { renderedLevel } from "./caps.ts";
import { ofWave } from "./of-wave.ts";
import type { Signal } from "./signal.ts";
import { usable } from "./tones.ts";

/** Noise that repeats: lines evenly apart, each of its size and of a phase of its own, and nothing between them or outside its band. */
export interface PeriodicNoise {
  readonly low: Hertz;
  readonly high: Hertz;
  /** How the size of its lines changes each octave. */
  readonly slope: Decibels;
}

/** It repeats after about so long: a power of two of samples. */
const about: Seconds = 2.7;
/** Peaks are cut off at so many times the root mean square, and the sizes put back, so often: the phases that remain peak low. */
const cut = 1.75;
const cuts = 12;
/** No sample is greater, at any rate. */
const peak: DecibelsFullScale = -18.1;

const start: Seconds = 0.1;
const whole: Seconds = 6;
const ramp: Seconds = 0.05;

/** How many samples it takes until it repeats. */
const periodAt = (rate: Hertz): number => 2 ** Math.round(Math.log2(about * rate));

/** A noise on both channels alike, six seconds of it. */
export const ofPeriodicNoise = (noise: PeriodicNoise): Signal => ({
  ...ofWave({ start, end: start + whole, attack: ramp, release: ramp, peak }, (rate) => {
    const period = periodOf(noise, rate);
    return (_, n) => period[n % period.length] ?? 0;
  }),
  loop: (rate) => {
    const from = Math.round((start + 2 * ramp) * rate);
    return { from, to: from + periodAt(rate) };
  },
});

/** One period at `renderedLevel`. */
function periodOf({ low, high, slope }: PeriodicNoise, rate: Hertz): Float64Array {
  const count = periodAt(rate);
  const fft = new FFT(count);
  const sizes = new Float64Array(count / 2);
  for (let line = 1; line < sizes.length; line += 1) {
    const frequency = (line * rate) / count;
    if (frequency >= low && frequency <= Math.min(high, usable * rate))
      sizes[line] = fromDecibels(slope * Math.log2(frequency / low));
  }
  const spectrum = randomly(sizes, seeded(1));
  let samples = inTime(fft, spectrum);
  for (let at = 0; at < cuts; at += 1)
    samples = inTime(fft, resized(fft, flattened(samples), sizes));
  return scaled(samples);
}

/** Lines of some sizes with any phases, as real and imaginary parts. */
function randomly(sizes: Float64Array, random: () => number): Float64Array {
  const spectrum = new Float64Array(4 * sizes.length);
  for (let line = 1; line < sizes.length; line += 1) {
    const angle = 2 * Math.PI * random();
    put(spectrum, line, (sizes[line] ?? 0) * Math.cos(angle), (sizes[line] ?? 0) * Math.sin(angle));
  }
  return spectrum;
}

/** A line, and its mirror image above half the rate: then the samples are real. */
function put(spectrum: Float64Array, line: number, re: number, im: number): void {
  const mirror = spectrum.length / 2 - line;
  spectrum[2 * line] = re;
  spectrum[2 * line + 1] = im;
  spectrum[2 * mirror] = re;
  spectrum[2 * mirror + 1] = -im;
}

function inTime(fft: FFT, spectrum: Float64Array): Float64Array {
  const out = new Float64Array(spectrum.length);
  fft.inverseTransform(out as unknown as number[], spectrum as unknown as number[]);
  return Float64Array.from({ length: out.length / 2 }, (_, n) => out[2 * n] ?? 0);
}

/** What is taller than the cut is cut off. */
function flattened(samples: Float64Array): Float64Array {
  const most = cut * rootMeanSquare(samples);
  return samples.map((sample) => Math.max(-most, Math.min(most, sample)));
}

/** The phases of some samples' lines, at the sizes they should have. */
function resized(fft: FFT, samples: Float64Array, sizes: Float64Array): Float64Array {
  const spectrum = new Float64Array(2 * samples.length);
  fft.realTransform(spectrum as unknown as number[], samples as unknown as number[]);
  const made = new Float64Array(spectrum.length);
  for (let line = 1; line < sizes.length; line += 1) {
    const [re = 0, im = 0] = spectrum.subarray(2 * line, 2 * line + 2);
    const by = (sizes[line] ?? 0) / (Math.hypot(re, im) || 1);
    put(made, line, re * by, im * by);
  }
  return made;
}

const rootMeanSquare = (samples: Float64Array): number =>
  Math.sqrt(samples.reduce((sum, x) => sum + x * x, 0) / samples.length);

function scaled(samples: Float64Array): Float64Array {
  const by = fromDecibels(renderedLevel) / rootMeanSquare(samples);
  return samples.map((sample) => sample * by);
}
