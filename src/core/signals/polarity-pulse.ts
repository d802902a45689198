import { renderedLevel } from "./caps.ts";
import { ofTones } from "./of-tones.ts";
import { scaledTo } from "./tones.ts";

/** Cosines of 100, 200 and 300 Hz: tall and narrow upwards, low and wide downwards, with no offset. Upside down it shows on any scope. */
const tones = scaledTo(
  renderedLevel,
  [1, 0.7, 0.4].map((size, at) => ({
    frequency: 100 * (at + 1),
    peak: 20 * Math.log10(size),
    turns: 0.25,
  })),
);

/** For absolute polarity, of what is measured: an ear does not hear it. */
export const polarityPulse = ofTones(
  4.2,
  [{ tones, left: 1, right: 1, start: 0.1, end: 4.1, swell: 0.04 }],
  { loop: { from: 1, to: 2 } },
);
