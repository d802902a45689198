import { renderedLevel } from "./caps.ts";
import { ofTones } from "./of-tones.ts";
import { scaledTo } from "./tones.ts";

const both = { left: 1, right: 1, swell: 0.05 } as const;
const low = scaledTo(renderedLevel, [{ frequency: 60, peak: 0 }]);
const middle = scaledTo(renderedLevel, [{ frequency: 500, peak: 0 }]);

/** 60 Hz against 500 Hz at one level, twice: where a seal leaks, or a cup sits loose, the low one is gone. */
export const sealCheck = ofTones(
  3.4,
  [0, 1.6].flatMap((from) => [
    { ...both, tones: low, start: from + 0.1, end: from + 0.8 },
    { ...both, tones: middle, start: from + 0.9, end: from + 1.6 },
  ]),
);
