import { fromDecibels } from "#core/units/decibels.ts";
import type { Hertz } from "#core/units/units.ts";
import { renderedLevel } from "./caps.ts";
import type { Noise } from "./noise.ts";
import { raised } from "./raised.ts";
import { usable } from "./tones.ts";

/**
 * The samples of one stretch of noise: without offset, root mean square exactly `renderedLevel` over the whole stretch,
 * ramps included, and the same wave at every rate.
 */
export function noiseSamples(noise: Noise, rate: Hertz): Float64Array {
  const samples = new Float64Array(Math.round(noise.length * rate));
  const count = noise.phases.length;
  for (let step = 0; step < count; step += 1) {
    const frequency = noise.low * (noise.high / noise.low) ** ((step + 0.5) / count);
    const turns = Number.parseInt(noise.phases.charAt(step), 16) / 16;
    if (frequency < usable * rate) addSine(samples, frequency / rate, turns);
  }
  return scaled(shaped(samples, noise, rate));
}

/** Adds sin 2π(step·n + turns), each sample from the two before it: a cosine a sine instead of one a sample. */
function addSine(samples: Float64Array, step: number, turns: number): void {
  const factor = 2 * Math.cos(2 * Math.PI * step);
  let before = Math.sin(2 * Math.PI * (turns - step));
  let now = Math.sin(2 * Math.PI * turns);
  for (let n = 0; n < samples.length; n += 1) {
    samples[n] = (samples[n] ?? 0) + now;
    const next = factor * now - before;
    before = now;
    now = next;
  }
}

/** The samples under their ramps, with what offset they had taken away under the same ramps. */
function shaped(samples: Float64Array, noise: Noise, rate: Hertz): Float64Array {
  const ramps = samples.map(
    (_, n) =>
      raised((n + 0.5) / rate, noise.attack) *
      raised((samples.length - n - 0.5) / rate, noise.release),
  );
  const wave = samples.map((sample, n) => sample * (ramps[n] ?? 0));
  const offset = sum(wave) / sum(ramps);
  return wave.map((sample, n) => sample - offset * (ramps[n] ?? 0));
}

function scaled(samples: Float64Array): Float64Array {
  const level = Math.sqrt(sum(samples.map((sample) => sample * sample)) / samples.length);
  const gain = fromDecibels(renderedLevel) / level;
  return samples.map((sample) => sample * gain);
}

const sum = (values: Float64Array): number => values.reduce((total, value) => total + value, 0);
