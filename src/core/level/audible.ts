import type { Decibels, Hertz } from "#core/units/units.ts";
import { shareOfWhite, thirds, weightedA } from "./weighting.ts";

/**
 * The threshold of hearing in a free field, third octaves from 20 Hz to 12.5 kHz (ISO 226:2003, table 1; value from memory). A third octave is about
 * as wide as what the ear takes together, so a band of noise is heard from about the same level on. Above, nobody hears better than there.
 */
const threshold: readonly Decibels[] = [
  78.5, 68.7, 59.5, 51.1, 44.0, 37.5, 31.5, 26.5, 22.1, 17.9, 14.4, 11.4, 8.6, 6.2, 4.4, 3.0, 2.2,
  2.4, 3.5, 1.7, -1.3, -4.2, -6.0, -5.4, -1.5, 6.0, 12.6, 13.9, 12.3,
];

/** How loud it is where somebody listens, A-weighted. Common practice, no source. */
export const rooms = {
  silent: 0,
  studio: 22,
  "quiet room": 32,
  "room with people": 45,
  "stage before the show": 58,
} as const satisfies Readonly<Record<string, Decibels>>;
export type Room = keyof typeof rooms;

/** A room's noise falls by five decibels an octave, as the curves that rooms are rated by do about there. Common practice, no source. */
const slope: Decibels = -5;
const sloped = (third: Hertz): Decibels => slope * Math.log2(third / 1000);
const slopedAsA =
  10 * Math.log10(thirds.reduce((sum, at) => sum + 10 ** ((sloped(at) + weightedA(at)) / 10), 0));

/** What is this far below what covers it is no more heard (common practice, no source). */
const covered: Decibels = -4;

const noiseOf = (room: Room, third: Hertz): Decibels =>
  room === "silent" ? Number.NEGATIVE_INFINITY : rooms[room] - slopedAsA + sloped(third);

/**
 * By how much hiss stands over what one must hear it through, the threshold of hearing and the noise of a room, in the third octave where it does
 * most: above nothing it is heard. `level` is of white noise from 20 Hz to 20 kHz at the ear, unweighted decibels of sound pressure. Headphones are
 * taken as open; what they keep out makes it the clearer.
 */
export function standsOut(level: Decibels, room: Room): Decibels {
  const each = thirds.map((third, at) => {
    const own = level + 10 * Math.log10(shareOfWhite(third));
    const least = threshold[Math.min(at, threshold.length - 1)] ?? 0;
    return own - Math.max(least, noiseOf(room, third) + covered);
  });
  return Math.max(...each);
}
