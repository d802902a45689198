import { renderedLevel } from "./caps.ts";
import { ofTones } from "./of-tones.ts";
import { scaledTo } from "./tones.ts";

const pair = (low: number, high: number) =>
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
    { ...throughout, tones: pair(2000, 5000), left: 1, right: 0 },
    { ...throughout, tones: pair(3000, 7000), left: 0, right: 1 },
  ],
  { loop: { from: 1, to: 2 } },
);
