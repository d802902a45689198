import type { Capture } from "./capture.ts";

const powerOf = (samples: Float32Array): number =>
  samples.reduce((sum, sample) => sum + sample * sample, 0);

/** A microphone is one channel: of what was recorded the louder one, whether it came on one alone, on both, or by two capsules. */
export function oneChannel({ channels, rate }: Capture): Capture {
  const [first, ...more] = channels;
  if (first === undefined) return { channels, rate };
  const loudest = more.reduce(
    (best, samples) => {
      const power = powerOf(samples);
      return power > best.power ? { samples, power } : best;
    },
    { samples: first, power: powerOf(first) },
  );
  return { channels: [loudest.samples], rate };
}
