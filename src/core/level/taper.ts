import { toDecibels } from "#core/units/decibels.ts";
import type { Decibels } from "#core/units/units.ts";

/**
 * A knob for loudness has a tenth of the voltage at half of its way, more or less along an exponential (common practice, no source). From none of its way
 * up to all of it.
 */
const base = 81;

/** What a knob so far up lets through, as a part of what it does all the way up. */
export const passedAt = (up: number): number => (base ** up - 1) / (base - 1);

/** The same in decibels; minus infinity all the way down. */
export const knobLevel = (up: number): Decibels => toDecibels(passedAt(up));

/** How far up a knob must be to let so much through; all the way for more than it can. */
export const knobFor = (level: Decibels): number =>
  Math.log(1 + (base - 1) * 10 ** (Math.min(0, level) / 20)) / Math.log(base);
