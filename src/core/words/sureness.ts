import type { Probability } from "#core/units/units.ts";

/** How sure something is, each from this probability on. */
const grades = [
  ["almost certain", 0.99],
  ["very likely", 0.95],
  ["likely", 0.75],
  ["more likely than not", 0.5],
  ["possible", 0],
] as const;
export type Sureness = (typeof grades)[number][0];

/** How sure a probability is called. */
export const surenessOf = (probability: Probability): Sureness =>
  grades.find(([, from]) => probability >= from)?.[0] ?? "possible";
