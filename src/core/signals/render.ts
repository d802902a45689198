import type { Hertz } from "#core/units/units.ts";
import { type SignalName, signals } from "./catalogue.ts";
import { noiseSamples } from "./noise-samples.ts";
import type { Polarity } from "./signal.ts";
import type { Sound } from "./sound.ts";

const slowest: Hertz = 8000;
const fastest: Hertz = 768_000;

/**
 * The samples of a signal at a sampling rate in hertz. The same name, rate and seed give the same samples; the seed
 * decides the order of a pair and nothing else.
 * @throws RangeError for a rate below 8 kHz (the idents' band would not fit) or above 768 kHz
 */
export function render(name: SignalName, rate: Hertz, seed: number): Sound {
  if (!(rate >= slowest && rate <= fastest)) {
    throw new RangeError(`sampling rate ${rate} Hz is not within ${slowest} to ${fastest} Hz`);
  }
  const { duration, noise, stretches } = signals[name];
  const length = Math.round(duration * rate);
  const sound = { left: new Float32Array(length), right: new Float32Array(length), rate };
  const samples = noise && noiseSamples(noise, rate);
  if (samples === undefined) return sound;
  for (const { start, left, right } of stretches(seed)) {
    const first = Math.round(start * rate);
    put(samples, sound.left, first, left);
    put(samples, sound.right, first, right);
  }
  return sound;
}

function put(samples: Float64Array, channel: Float32Array, first: number, side: Polarity): void {
  if (side !== 0) {
    channel.set(
      samples.map((sample) => side * sample),
      first,
    );
  }
}
