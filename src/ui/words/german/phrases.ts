import type { Probability } from "#core/units/units.ts";

/** A probability as people say it: so many in a hundred, never none and never all. */
export function inHundred(probability: Probability): string {
  if (probability < 0.01) return "weniger als 1 von 100";
  return `${Math.min(99, Math.round(probability * 100))} von 100`;
}
