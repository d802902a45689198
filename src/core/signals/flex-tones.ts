import { renderedLevel } from "./caps.ts";
import { ofTones } from "./of-tones.ts";
import { scaledTo } from "./tones.ts";

/** Of each channel, hertz. */
export const flexFrequencies = { left: [2000, 5000], right: [3000, 7000] } as const;

const pair = ([low, high]: readonly [number, number]) =>
  scaledTo(renderedLevel, [
    { frequency: low, peak: 0 },
    { frequency: high, peak: 0 },
  ]);
const throughout = { start: 0.1, end: 10.1, swell: 0.02 };

/**
 * To be watched while a lead is bent: two tones on each channel, none of them on the other. Whole cycles of each fit into a millisecond, so that
 * windows of one or two milliseconds tell them apart.
 */
export const flexTones = ofTones(
  10.2,
  [
    { ...throughout, tones: pair(flexFrequencies.left), left: 1, right: 0 },
    { ...throughout, tones: pair(flexFrequencies.right), left: 0, right: 1 },
  ],
  { loop: { from: 1, to: 2 } },
);
