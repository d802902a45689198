import type { DecibelsFullScale } from "#core/units/units.ts";
import { ofTones } from "./of-tones.ts";

/** Peaks, from the quietest; the last is a sine of full scale. */
const steps: readonly DecibelsFullScale[] = Array.from({ length: 13 }, (_, at) => 3 * at - 36);

/**
 * 1 kHz on both channels, a second each, 3 dB louder every time up to full scale: at which step does a lamp light, or a measured wave bend?
 * Never on ears.
 */
export const staircase = ofTones(
  0.2 + steps.length,
  steps.map((peak, at) => ({
    tones: [{ frequency: 1000, peak }],
    left: 1,
    right: 1,
    start: 0.1 + at,
    end: 1.1 + at,
    swell: 0.01,
  })),
);
