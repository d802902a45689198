import { toDecibels } from "#core/units/decibels.ts";
import type { Returned } from "./measurer.ts";

/** What comes back in some samples. */
export function returnedOf(channels: readonly Float32Array[]): Returned {
  let peak = 0;
  const levels = channels.map((samples) => {
    let sum = 0;
    for (const sample of samples) {
      sum += sample * sample;
      peak = Math.max(peak, Math.abs(sample));
    }
    return 10 * Math.log10(sum / Math.max(1, samples.length));
  });
  return { levels, peak: toDecibels(peak) };
}
