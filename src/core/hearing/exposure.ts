import type { Seconds } from "#core/units/units.ts";

/** How much was heard: for how long something sounded, and the energy of it, that of full scale RMS for a second being one. */
export interface Exposure {
  readonly seconds: Seconds;
  readonly energy: number;
}

export const unheard: Exposure = { seconds: 0, energy: 0 };

/** Two of them together: energies add up, as the rules that halve the time for each 3 dB have it. */
export const together = (one: Exposure, other: Exposure): Exposure => ({
  seconds: one.seconds + other.seconds,
  energy: one.energy + other.energy,
});

/** Sound pressure level in decibels that full scale RMS makes in sensitive headphones of 115 dB/V behind 1 V (Handbook, section 10). */
const fullScaleAtEar = 115;

/** 85 dBA for eight hours (NIOSH 98-126): full scale for so many seconds at a level at the ear. */
const dayLevel = 85;
const day: Seconds = 8 * 3600;

/**
 * What part of a day's noise it was, 1 for all of it: 85 dBA for eight hours, 3 dB more for half the time (NIOSH 98-126).
 * Unweighted, so rather too much; and the amplifier, which nobody knows here, is taken to make `atEar` of full scale.
 * @param atEar sound pressure level of full scale RMS at the ear, in decibels
 */
export const shareOfDay = ({ energy }: Exposure, atEar = fullScaleAtEar): number =>
  (energy / day) * 10 ** ((atEar - dayLevel) / 10);
