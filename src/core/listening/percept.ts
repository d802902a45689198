import { agreement, type Complex, size } from "#core/units/complex.ts";
import { toDecibels } from "#core/units/decibels.ts";
import type { Decibels, Probability, Seconds } from "#core/units/units.ts";
import { type Heard, heards, type Place } from "./heard.ts";
import { below } from "./normal.ts";

/**
 * Where judgements turn, and how far people differ, in decibels. One side by 15 to 20 dB moves a sound fully to that side, past 8
 * to 10 it widens, about one is the least noticed: handbook, section 6. The spreads: common practice, no source.
 */
const turning = {
  oneEar: { at: 16, spread: 2 },
  offCentre: { at: 3.5, spread: 1.2 },
  /** Opposite polarity sounds wide until one side is this much stronger. */
  wide: { at: 10, spread: 2.5 },
  faint: { at: -12, spread: 2 },
  nothing: { at: -33, spread: 4 },
} as const;

/** Over, for a level above a turning point. */
const over = (level: Decibels, { at, spread }: { at: Decibels; spread: Decibels }): Probability =>
  below((level - at) / spread);

/**
 * What a listener would say of a sound, from the signals at the two ears, both of one shape. `reference` is the amplitude of
 * the stronger ear in a healthy chain; `late` is how much later the right ear gets it, seconds. Returns one probability for each of
 * `heards`, in their order.
 */
export function percept(
  left: Complex,
  right: Complex,
  reference: number,
  late: Seconds = 0,
): Float64Array {
  const stronger = Math.max(size(left), size(right));
  const level = stronger > 0 ? toDecibels(stronger / reference) : Number.NEGATIVE_INFINITY;
  const heard = level === Number.NEGATIVE_INFINITY ? 0 : over(level, turning.nothing);
  const faint = level === Number.NEGATIVE_INFINITY ? 0 : 1 - over(level, turning.faint);
  const place = placed(left, right, sidewards(left, right, late));
  return Float64Array.from(heards, (name: Heard) => {
    if (name === "nothing") return 1 - heard;
    const weak = name.startsWith("faint, ");
    const at = (weak ? name.slice(7) : name) as Place;
    return heard * (weak ? faint : 1 - faint) * place[at];
  });
}

/** Chances of each place for a sound that is heard at all. */
function placed(
  left: Complex,
  right: Complex,
  lead: Decibels,
): Readonly<Record<Place, Probability>> {
  const apart = Math.abs(lead);
  const wide = agreement(left, right) < 0 ? 1 - over(apart, turning.wide) : 0;
  const oneEar = (1 - wide) * over(apart, turning.oneEar);
  const middle = (1 - wide) * (1 - over(apart, turning.offCentre));
  const off = Math.max(0, 1 - wide - oneEar - middle);
  // Which side is as sure as the difference is large.
  const leftwards = over(lead, { at: 0, spread: turning.offCentre.spread });
  return {
    "left ear": oneEar * leftwards,
    "right ear": oneEar * (1 - leftwards),
    middle,
    "off to the left": off * leftwards,
    "off to the right": off * (1 - leftwards),
    "all round": wide,
  };
}

/** The earlier ear pulls a sound to itself, fully by about 0.7 to 1 ms (handbook, section 5): as if it were this much louder. */
const pullOf = (late: Seconds): Decibels => Math.max(-1, Math.min(1, late / 0.001)) * 20;

/** How far to the left a sound seems, in the decibels by which the left ear would have to lead; `late` as for `percept`. */
export const sidewards = (left: Complex, right: Complex, late: Seconds): Decibels =>
  leadOf(left, right) + pullOf(late);

/** By how many decibels the left ear leads, at most 100 either way. */
function leadOf(left: Complex, right: Complex): Decibels {
  const floor = 1e-5 * Math.max(size(left), size(right), 1e-30);
  return toDecibels((size(left) + floor) / (size(right) + floor));
}
