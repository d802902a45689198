import { toDecibels } from "#core/units/decibels.ts";
import type { Decibels, Hertz } from "#core/units/units.ts";

/** Poles of the A-weighting, hertz (IEC 61672-1:2013, annex E). */
const [f1, f2, f3, f4] = [20.598997, 107.65265, 737.86223, 12194.217];

const response = (at: Hertz): number => {
  const s = at * at;
  return (
    (f4 * f4 * s * s) / ((s + f1 * f1) * Math.sqrt((s + f2 * f2) * (s + f3 * f3)) * (s + f4 * f4))
  );
};
const atOneKilohertz = response(1000);

/** The A-weighting at a frequency above nothing, nought at 1 kHz (IEC 61672-1:2013, annex E). */
export const weightedA = (at: Hertz): Decibels => toDecibels(response(at) / atOneKilohertz);

/** The exact middle frequencies of third octaves from 20 Hz to 20 kHz, base ten (IEC 61260-1:2014). */
export const thirds: readonly Hertz[] = Array.from(
  { length: 31 },
  (_, at) => 10 ** (1.3 + at / 10),
);

/** A third octave is so wide against its middle. */
const width = 10 ** 0.05 - 10 ** -0.05;

/** How much of white noise between 20 Hz and 20 kHz lies in a third octave, as a part of its power. */
export const shareOfWhite = (third: Hertz): number => (third * width) / whole;
const whole = thirds.reduce((sum, third) => sum + third * width, 0);

/** How much softer white noise is when A-weighted. */
export const whiteAsA: Decibels =
  10 *
  Math.log10(
    thirds.reduce((sum, third) => sum + shareOfWhite(third) * 10 ** (weightedA(third) / 10), 0),
  );
