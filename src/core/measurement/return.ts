import type { Complex } from "#core/units/complex.ts";
import type { Decibels, DecibelsFullScale, Hertz } from "#core/units/units.ts";

/**
 * Why a capture is not judged.
 *
 * - `rate`: at its rate too few tones fit (hertz)
 * - `not finite`: so many samples are no numbers
 * - `silent`: nothing but zeros, or next to it (root mean square, dBFS)
 * - `too quiet`: the signal is not there, or lies too deep in the noise (decibels of the clearest fifteen tones over the noise about them)
 * - `cut short`: no stretch of tones is there from end to end (seconds of the longer)
 * - `mono`: both channels are one and the same, noise and all, or one is dead while the other has noise (the greatest sample they differ by, or
 *   the dead one has; the bound is the noise they would differ by)
 * - `clipped`: tops are cut off flat (part of all samples)
 * - `gaps`: samples are missing, twice, or silenced (seconds of the longest)
 * - `clocks`: the two clocks do not keep one ratio, or are too far apart (seconds off a straight line; or parts of a million)
 * - `processed`: the level changes by itself, or tones come and go (decibels)
 */
export const refusals = [
  "rate",
  "not finite",
  "silent",
  "too quiet",
  "cut short",
  "mono",
  "clipped",
  "gaps",
  "clocks",
  "processed",
] as const;
export type Refusal = (typeof refusals)[number];

/** A capture that is not judged: why, what was measured, and the bound it broke. */
export interface NotMeasured {
  readonly refused: Refusal;
  readonly measured: number;
  readonly bound: number;
}

/** A number with the standard deviation of its error. */
export interface Estimate {
  readonly value: number;
  readonly error: number;
}

/** A complex gain; the error is the standard deviation of each of its parts. */
export interface Gain extends Complex {
  readonly error: number;
}

/**
 * Gains at one frequency, `gains[input][programme]`, left programme first. Nothing where the tone was not heard with that programme: a
 * capture of one stretch alone has but one programme at each.
 */
export interface Response {
  readonly frequency: Hertz;
  readonly gains: readonly (readonly (Gain | undefined)[])[];
}

/** One programme at one input, over all frequencies. */
export interface Entry {
  /** Root mean square of the gain over all tones; next to nothing where only noise is. */
  readonly level: Decibels;
  /** Decibels. */
  readonly error: Decibels;
  /** Whether it stands out of the noise. */
  readonly carried: boolean;
  /** As sent, upside down, or not to be told. */
  readonly polarity: 1 | -1 | undefined;
  /** How much later than `delay` of the whole it comes, seconds. */
  readonly late: Estimate | undefined;
}

/** The other programme in an input, against the one that is stronger there. */
export interface Crosstalk {
  readonly level: Decibels;
  /** Whether it pushes the same way as the stronger, the other way, or not to be told. */
  readonly sign: 1 | -1 | undefined;
}

/** Lines of the mains that stand out of the noise: root mean square each, the fundamental first; nothing for one that does not, or cannot be told. */
export interface Hum {
  readonly mains: 50 | 60;
  readonly frequency: Hertz;
  readonly levels: readonly (DecibelsFullScale | undefined)[];
}

/** What distortion of each order makes, root mean square against that of the tones. */
export interface Distortion {
  readonly second: Estimate;
  readonly third: Estimate;
}

/** One input by itself. */
export interface Input {
  /** Root mean square of the tones, */
  readonly tones: DecibelsFullScale;
  /** and of the noise up to 15 kHz (or the highest tone), without tones, hum and what distortion makes. */
  readonly noise: DecibelsFullScale;
  readonly signalToNoise: Decibels;
  readonly crosstalk: Crosstalk | undefined;
  readonly hum: Hum | undefined;
  readonly distortion: Distortion | undefined;
}

/** What a capture of the multitone says of what lies between output and input. */
export interface ReturnMeasurement {
  /** Which stretches of the signal are there from end to end; of one alone each tone gives one programme only. */
  readonly stretches: "both" | "first" | "second";
  /** One for each tone, ascending. Phases are as if everything came earlier by `delay`. */
  readonly responses: readonly Response[];
  /** `entries[input][programme]`. */
  readonly entries: readonly (readonly Entry[])[];
  readonly inputs: readonly Input[];
  /** From the capture's beginning to that of the signal as the strongest entry has it, seconds; below nothing where the capture began later. */
  readonly delay: Estimate;
  /** How much later the right programme comes than the left, each by its stronger entry; nothing where one is not carried. */
  readonly between: Estimate | undefined;
  /** By how much longer the capture lasts than what was played, parts of a million. */
  readonly drift: Estimate;
}
