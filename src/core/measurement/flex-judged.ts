import type { Decibels } from "#core/units/units.ts";
import type { FlexMean } from "./flex-break.ts";
import type { FlexCause, FlexFault } from "./flex-names.ts";
import type { FlexReading } from "./flex-reading.ts";
import { place } from "./flex-record.ts";
import { enough, explained } from "./flex-shape.ts";

/** What a break did. */
export interface FlexJudged {
  readonly fault: FlexFault;
  readonly cause: FlexCause;
  readonly depth: Decibels;
  readonly atLeast: boolean;
}

/** Deeper is not told apart from nothing. */
const deepest: Decibels = 60;

/**
 * Names what a mean deviation is; undefined where no fault explains it, as where noise came in from elsewhere.
 * @param variance that of a level by noise, in one window
 */
export function judged(
  mean: FlexMean,
  reading: FlexReading,
  faults: readonly FlexFault[],
  variance: number,
): FlexJudged | undefined {
  const { fault, part } = explained(mean.values, reading, faults);
  if (part < enough) return undefined;
  return {
    fault,
    cause: causeOf(fault, mean, reading, variance),
    ...depthOf(fault, mean, reading, variance),
  };
}

/** Windows overlap by three quarters; so many are new. */
const fresh = ({ windows }: FlexMean): number => Math.max(1, windows / 3);

/** Noise adds to a power four times the variance of a level: two tones, two parts each. */
const noisePower = 4;

function depthOf(fault: FlexFault, mean: FlexMean, reading: FlexReading, variance: number) {
  const noise = noisePower * variance;
  const floor = Math.max((3 * noise) / Math.sqrt(fresh(mean)), 10 ** (-deepest / 10));
  const left = powerOf(fault, mean, reading) - (matrixed(fault) ? 0 : noise);
  const atLeast = left < floor;
  return { depth: -10 * Math.log10(Math.max(left, floor)), atLeast };
}

const matrixed = (fault: FlexFault): boolean => fault === "sleeve" || fault === "tip to ring";

/** The square of what is left of what a fault takes away. */
function powerOf(fault: FlexFault, { values }: FlexMean, reading: FlexReading): number {
  const power = (which: 0 | 1) => values[place.power + which] ?? 0;
  switch (fault) {
    case "tip":
      return power(0);
    case "ring":
      return power(1);
    case "tip and ring":
      return (power(0) + power(1)) / 2;
    case "sleeve":
      return bothLeft(values, reading, 1) ** 2;
    case "tip to ring":
      return reading.sides.every(({ side }) => side.own !== undefined)
        ? bothLeft(values, reading, -1) ** 2
        : seenPower(values, reading);
    case "mixed":
      return seenPower(values, reading);
  }
}

const seenPower = (values: Float64Array, { sides }: FlexReading): number =>
  values[place.power + (sides[0].side.own === undefined ? 1 : 0)] ?? 0;

/** What is left of the middle (sign 1) or of the difference (-1), on both channels together. */
function bothLeft(values: Float64Array, reading: FlexReading, sign: 1 | -1): number {
  const at = (which: 0 | 1) => {
    const other = which === 0 ? 1 : 0;
    const now = (values[place.level + which] ?? 0) + sign * (values[place.signed + other] ?? 0);
    return now / (1 + sign * usual(reading, other));
  };
  return (at(0) + at(1)) / 2;
}

/** What usually comes over from a side, signed. */
const usual = ({ sides }: FlexReading, which: 0 | 1): number =>
  [0, 1].reduce(
    (sum, tone) =>
      sum + (sides[which].weights[tone] ?? 0) ** 2 * (sides[which].crosstalk[2 * tone] ?? 0),
    0,
  );

/** The power that usually comes over from a side. */
const usualPower = ({ sides }: FlexReading, which: 0 | 1): number =>
  [0, 1].reduce((sum, tone) => {
    const [re = 0, im = 0] = sides[which].crosstalk.subarray(2 * tone, 2 * tone + 2);
    return sum + (sides[which].weights[tone] ?? 0) ** 2 * (re * re + im * im);
  }, 0);

/** So many windows at least, clear of edges, must tell. */
const telling = 3;

/**
 * Open or short. A side shorted to the sleeve sends its current through the return: more of it comes over to the side that plays on. One that is open sends
 * none: less comes over; or, at a line input, its neighbour bleeds into it along the lead (handbook, section 5).
 */
function causeOf(
  fault: FlexFault,
  mean: FlexMean,
  reading: FlexReading,
  variance: number,
): FlexCause {
  if (fault === "sleeve") return "open";
  if (fault === "tip to ring") return "short";
  if ((fault !== "tip" && fault !== "ring") || mean.windows < telling) return "open or short";
  const lost = fault === "tip" ? 0 : 1;
  const noise = noisePower * variance;
  const more = (which: 0 | 1): number => {
    const before = usualPower(reading, which);
    const by = (mean.values[place.overPower + which] ?? 0) - noise - before;
    const margin = noise * (0.5 + 3 / Math.sqrt(fresh(mean))) + before / 2 + 1e-6;
    return Math.abs(by) < margin ? 0 : by;
  };
  const [fromLost, intoLost] = [more(lost), more(lost === 0 ? 1 : 0)];
  if (fromLost > 0) return "short";
  return fromLost < 0 || intoLost > 0 ? "open" : "open or short";
}
