import type { EarCheck } from "./check.ts";
import { whereWas } from "./hear.ts";

/** Two bursts in random order, one the same on both sides, one in opposite polarity; asked about each. */
export const pair: EarCheck = {
  name: "pair",
  signal: "burst-pair",
  questions: [whereWas("in phase", [1, 1]), whereWas("opposite", [1, -1])],
  seconds: 9,
  required: true,
};
