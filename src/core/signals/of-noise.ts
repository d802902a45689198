import type { Hertz, Seconds } from "#core/units/units.ts";
import { renderedLevel } from "./caps.ts";
import type { Noise } from "./noise.ts";
import { noiseSamples } from "./noise-samples.ts";
import type { Channels, Polarity, Signal, Stretch } from "./signal.ts";

/** One noise, at the start of each of some stretches. */
export const ofNoise = (
  noise: Noise,
  duration: Seconds,
  stretches: (seed: number) => readonly Stretch[],
): Signal => ({
  duration,
  level: renderedLevel,
  peak: noise.peak,
  stretches,
  fill: (channels: Channels, rate: Hertz, seed: number) => {
    const samples = noiseSamples(noise, rate);
    for (const { start, left, right } of stretches(seed)) {
      const first = Math.round(start * rate);
      put(samples, channels.left, first, left);
      put(samples, channels.right, first, right);
    }
  },
});

function put(samples: Float64Array, channel: Float32Array, first: number, side: Polarity): void {
  if (side !== 0)
    channel.set(
      samples.map((sample) => side * sample),
      first,
    );
}
