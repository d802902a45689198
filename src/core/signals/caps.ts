import type { Decibels, DecibelsFullScale, Seconds } from "#core/units/units.ts";

/*
 * Levels near ears. Handbook values; common practice, no source.
 * Full scale is a sample of 1: a level is 20 log10 of the root mean square of one channel while it sounds.
 */

/** Level of the first sound, and of the first one after any trouble. */
export const startLevel: DecibelsFullScale = -50;
/** The most one press may change the level, */
export const levelStep: Decibels = 3;
/** and the least time it takes. */
export const stepTime: Seconds = 0.25;
/** No channel is louder than this over any `capWindow`. */
export const levelCap: DecibelsFullScale = -20;
/** The time over which `levelCap` holds: about what hearing adds up. */
export const capWindow: Seconds = 0.3;
/** No sample is greater than this. */
export const peakCap: DecibelsFullScale = -12;
/** How much lower sound comes back after a hand touched a plug, lead, switch or amplifier. */
export const handDrop: Decibels = 20;
/** The level goes no lower than this: softer is silence. */
export const levelFloor: DecibelsFullScale = -70;
/** Level of every ident and burst as rendered, from its first ramp's start to its last ramp's end. */
export const renderedLevel: DecibelsFullScale = -26;
