import { ofPeriodicNoise } from "./periodic-noise.ts";

/** Equal power in each octave from 20 Hz to 20 kHz: 3.01 dB less each octave up. */
export const pinkNoise = ofPeriodicNoise({ low: 20, high: 20_000, slope: -10 * Math.log10(2) });

/** Equal power in each hertz from 20 Hz to 20 kHz. */
export const whiteNoise = ofPeriodicNoise({ low: 20, high: 20_000, slope: 0 });

/** The same noise on both sides, where level alone moves it: the listener brings it to the middle. */
export const balanceTone = ofPeriodicNoise({ low: 215, high: 3800, slope: -10 * Math.log10(2) });
