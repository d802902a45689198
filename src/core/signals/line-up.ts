import { ofTones } from "./of-tones.ts";
import type { Tone } from "./tones.ts";

/** Line-up: 1 kHz at −18 dBFS, against a sine of full scale. EBU R68; ITU-R BS.645-2. */
export const lineUpTone: Tone = { frequency: 1000, peak: -18 };

/** Line-up tone on both channels. */
export const lineUp = ofTones(
  10.2,
  [{ tones: [lineUpTone], left: 1, right: 1, start: 0.1, end: 10.1, swell: 0.02 }],
  { loop: { from: 1, to: 2 } },
);
