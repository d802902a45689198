import type { Signal } from "./signal.ts";

/** Nothing on either channel, as long as an ident: whoever reports a side now is guessing. */
export const silence: Signal = {
  duration: 1.5,
  level: Number.NEGATIVE_INFINITY,
  peak: Number.NEGATIVE_INFINITY,
  stretches: () => [],
  turnedUp: true,
  fill: () => {},
};
