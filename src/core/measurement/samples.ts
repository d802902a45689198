import type { Capture } from "./capture.ts";
import type { NotMeasured } from "./return.ts";

/** What can be told from the samples alone, before the signal is looked for. */

/** Quieter than this is no signal through any converter. */
const silence = -110;
/** Tops are flat from so many samples on, */
const flat = 3;
/** and so many of all samples in flat tops are clipping: the signal goes so high for a shorter time. */
const mostFlat = 5e-5;
/** Flat tops of few steps of a converter are its steps. */
const steps = 64;

const notNumbers = (samples: Float32Array): number => {
  let count = 0;
  for (let n = 0; n < samples.length; n += 1) if (!Number.isFinite(samples[n])) count += 1;
  return count;
};

function rootMeanSquare(samples: Float32Array): number {
  let sum = 0;
  for (let n = 0; n < samples.length; n += 1) sum += (samples[n] ?? 0) ** 2;
  return Math.sqrt(sum / (samples.length || 1));
}

/** The greatest sample, and the smallest that is not nothing. */
function limits(samples: Float32Array): { readonly most: number; readonly least: number } {
  let [most, least] = [0, Number.POSITIVE_INFINITY];
  for (let n = 0; n < samples.length; n += 1) {
    const sample = samples[n] ?? 0;
    const size = Math.abs(sample);
    if (size > most) most = size;
    if (size > 0 && size < least) least = size;
  }
  return { most, least };
}

/** The part of all samples that lie in flat tops, at the greatest value of either sign. */
function flatPart(samples: Float32Array): number {
  const { most, least } = limits(samples);
  if (most < steps * least) return 0;
  return (flatAt(samples, 1) + flatAt(samples, -1)) / samples.length;
}

function greatest(samples: Float32Array, sign: 1 | -1): number {
  let most = Number.MIN_VALUE;
  for (let n = 0; n < samples.length; n += 1) most = Math.max(most, sign * (samples[n] ?? 0));
  return most;
}

function flatAt(samples: Float32Array, sign: 1 | -1): number {
  const top = 0.99999 * greatest(samples, sign);
  let [run, count] = [0, 0];
  for (let n = 0; n < samples.length; n += 1) {
    run = sign * (samples[n] ?? 0) >= top ? run + 1 : 0;
    if (run >= flat) count += run === flat ? flat : 1;
  }
  return count;
}

/** Whether a capture can be no measurement, whatever signal is in it. */
export function faultOfSamples({ channels }: Capture): NotMeasured | undefined {
  const broken = channels.reduce((sum, samples) => sum + notNumbers(samples), 0);
  if (broken > 0) return { refused: "not finite", measured: broken, bound: 0 };
  const loudest = Math.max(0, ...channels.map(rootMeanSquare));
  const level = Math.max(-999, 20 * Math.log10(loudest));
  if (level < silence) return { refused: "silent", measured: level, bound: silence };
  const clipped = Math.max(0, ...channels.map(flatPart));
  if (clipped > mostFlat) return { refused: "clipped", measured: clipped, bound: mostFlat };
  return undefined;
}
