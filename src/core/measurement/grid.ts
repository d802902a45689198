import type { Hertz, Seconds } from "#core/units/units.ts";

/*
 * The grid: a capture brought onto the clock of the signal itself, at a rate of our own, so that every tone is a whole number of hertz there
 * and a comb repeats after a whole number of samples.
 */

/** Samples a second of the signal. Twice the highest tone and more: what folds lands above the tones, so the filter may be short. */
export const gridRate: Hertz = 64_000;
/** A comb whose first tone is moved to nothing repeats after so many samples: 8 ms, a power of two. */
export const period = 512;
/** So many periods are a second. */
export const periods: number = gridRate / period;

/** When and how fast the signal's time passes in a capture. */
export interface Clock {
  /** The signal's beginning, in seconds of the capture; below nothing where the capture began later. */
  readonly start: Seconds;
  /** Seconds of the capture to one second of the signal. */
  readonly pace: number;
}

/** Samples on the grid: the first one lies `first` samples after the signal's beginning. */
export interface Gridded {
  readonly channels: readonly Float64Array[];
  readonly first: number;
}

/** Of a number that repeats, the one from nothing up. */
export const wrapped = (value: number, round: number): number => ((value % round) + round) % round;
