import type { Hertz } from "#core/units/units.ts";
import { gridRate } from "./grid.ts";

/*
 * The interpolating filter: a sine over its argument under a Kaiser window (J. F. Kaiser, 1974, whose formulas for length and shape these are). It is flat up
 * to the highest tone, and takes away what would fold onto a tone; between those it may do as it likes.
 */
const pass: Hertz = 15_150;
const stop: Hertz = gridRate - pass;
const attenuation = 128;
const shape = 0.1102 * (attenuation - 8.7);
const half = (attenuation - 7.95) / (14.36 * (stop - pass)) / 2;

/** Between so many instants a second the weights go along straight lines: right to −120 dB. */
const fineness = 100e6;

/** Weights for samples around an instant, for instants so many parts of a sample apart, and how each changes to the next. */
export interface Kernel {
  readonly taps: number;
  readonly phases: number;
  readonly weights: Float64Array;
  readonly steps: Float64Array;
}

/** The modified Bessel function of order nothing, by its series. */
function bessel(x: number): number {
  let [sum, term] = [1, 1];
  for (let k = 1; term > 1e-14 * sum; k += 1) {
    term *= (x / (2 * k)) ** 2;
    sum += term;
  }
  return sum;
}

const whole = bessel(shape);

/** The filter at a time from its middle. */
function weightAt(time: number): number {
  const inside = 1 - (time / half) ** 2;
  if (inside <= 0) return 0;
  const angle = 2 * Math.PI * (gridRate / 2) * time;
  const sinc = Math.abs(angle) < 1e-9 ? 1 : Math.sin(angle) / angle;
  return (gridRate * sinc * bessel(shape * Math.sqrt(inside))) / whole;
}

let last: { readonly rate: Hertz; readonly kernel: Kernel } | undefined;

/** The kernel for samples at a rate; the last one is remembered. */
export function kernelFor(rate: Hertz): Kernel {
  if (last?.rate !== rate) last = { rate, kernel: made(rate) };
  return last.kernel;
}

function made(rate: Hertz): Kernel {
  const reach = Math.ceil(half * rate);
  const [taps, phases] = [2 * reach, 2 ** Math.ceil(Math.log2(fineness / rate))];
  const weights = new Float64Array((phases + 1) * taps);
  for (let at = 0; at < weights.length; at += 1) {
    const [phase, tap] = [Math.floor(at / taps), at % taps];
    weights[at] = weightAt((phase / phases + reach - 1 - tap) / rate) / rate;
  }
  const steps = new Float64Array(phases * taps);
  for (let at = 0; at < steps.length; at += 1)
    steps[at] = (weights[at + taps] ?? 0) - (weights[at] ?? 0);
  return { taps, phases, weights, steps };
}
