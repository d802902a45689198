import type { Behaviour } from "#core/rig/behaviour.ts";
import { size } from "#core/units/complex.ts";
import { toDecibels } from "#core/units/decibels.ts";
import type { Decibels, Hertz } from "#core/units/units.ts";

/** Low, middle and high, where a way that depends on frequency is looked at. */
export const bands: readonly [low: Hertz, middle: Hertz, high: Hertz] = [100, 1000, 10_000];

const tones = ["even", "thin", "dull"] as const;
/** Thin: the low band is lost; dull: the high one is. */
export type Tone = (typeof tones)[number];

/** What is lost in a band before it is said. Common practice, no source. */
const told: Decibels = 6;

/** How a way sounds that is not the same at all frequencies, from its three bands: by each ear's greatest entry in the middle. */
export function toneOf(low: Behaviour, middle: Behaviour, high: Behaviour): Tone {
  const levels = [low, middle, high].map(({ gains }) =>
    middle.gains.map((row, ear) => {
      const loudest = row.map(size);
      const side = loudest.indexOf(Math.max(...loudest));
      const gain = gains[ear]?.[side];
      return toDecibels(gain === undefined ? 1e-9 : Math.max(size(gain), 1e-9));
    }),
  );
  const [lows = [], mids = [], highs = []] = levels;
  const heard = mids.map((level, ear) => ({ level, ear })).filter(({ level }) => level > -45);
  if (heard.some(({ level, ear }) => level - (lows[ear] ?? 0) > told)) return "thin";
  if (heard.some(({ level, ear }) => (highs[ear] ?? 0) - level > told)) return "thin";
  return heard.some(({ level, ear }) => level - (highs[ear] ?? 0) > told) ? "dull" : "even";
}
