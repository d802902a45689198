import type { Seconds } from "#core/units/units.ts";
import { bulkOf, earlier, type Point, straightThrough } from "./delay.ts";
import type { Line } from "./entries.ts";
import { gridRate, period, wrapped } from "./grid.ts";
import { powerAt } from "./look.ts";
import { polarityOf } from "./polarity.ts";
import type { Crosstalk, Entry, Estimate } from "./return.ts";
import { median } from "./statistics.ts";

/** One programme at one input, before the delay of the whole is known. */
export interface Heard {
  readonly line: Line;
  readonly points: readonly Point[];
  /** Mean square of the gain over all tones, the noise taken off, and the standard deviation of that. */
  readonly power: Estimate;
  readonly carried: boolean;
  /** When it comes on the grid. */
  readonly late: Estimate | undefined;
  readonly polarity: 1 | -1 | undefined;
}

/** Something is carried that stands so many standard deviations out of the noise. */
const sure = 6;

/** Tones with so much more noise than the middle one, as hum makes it, are left out of a level. */
const laden = 20;

function powerOf({ gains, power }: Line): Estimate {
  const most = laden * median([...power]);
  let [sum, noise, many] = [0, 0, 0];
  for (const [at, own] of power.entries()) {
    if (own > most) continue;
    const size = powerAt(gains, at);
    sum += size - own;
    noise += 2 * Math.max(0, size - own) * own + own * own;
    many += 1;
  }
  return { value: sum / Math.max(1, many), error: Math.sqrt(noise) / Math.max(1, many) };
}

/** How far the power stands out, had there been noise alone. */
function standing({ gains, power }: Line): number {
  let sum = 0;
  for (let at = 0; at < power.length; at += 1)
    sum += Math.min(99, powerAt(gains, at) / ((power[at] ?? 0) || 1e-30)) - 1;
  return sum / Math.sqrt(Math.max(1, power.length));
}

/** What a comb alone says of a delay is the same after so long. */
const round: Seconds = period / gridRate;

/** What a line says, its delay less than 4 ms from one. */
export function heardOf(line: Line, points: readonly Point[], about: Seconds): Heard {
  const power = powerOf(line);
  const carried = standing(line) > sure;
  if (!carried) return { line, points, power, carried, late: undefined, polarity: undefined };
  const near = about + wrapped(bulkOf([points]) - about + round / 2, round) - round / 2;
  const { delay, error } = straightThrough(points, near);
  const polarity = polarityOf(points, near);
  return { line, points, power, carried, late: { value: delay, error }, polarity };
}

/** Ten times the logarithm of a power; an error larger than the power stands for it where it is below nothing. */
export function entryOf({ power, carried, late, polarity }: Heard, delay: Seconds): Entry {
  const least = Math.max(power.value, power.error, 1e-30);
  return {
    level: 10 * Math.log10(least),
    error: (10 / Math.LN10) * (power.error / least),
    carried,
    polarity,
    late: late && { value: late.value - delay, error: late.error },
  };
}

/** The stronger of some; the first of none. */
export const strongest = <T extends { readonly power: Estimate }>(
  all: readonly T[],
): T | undefined =>
  all.reduce<T | undefined>(
    (best, one) => (best === undefined || one.power.value > best.power.value ? one : best),
    undefined,
  );

/** Gains of one against those of another, where both are known. */
function quotients(one: Heard, other: Heard): readonly Point[] {
  const known = new Map(other.points.map((point) => [point.frequency, point]));
  return one.points.flatMap(({ frequency, re, im, weight }) => {
    const by = known.get(frequency);
    if (by === undefined) return [];
    const [size, own] = [by.re * by.re + by.im * by.im, re * re + im * im];
    const noise = size / weight + own / by.weight + 1 / (weight * by.weight);
    return [
      {
        frequency,
        re: re * by.re + im * by.im,
        im: im * by.re - re * by.im,
        weight: 1 / noise,
      },
    ];
  });
}

/** How much later one comes than another: tone by tone where both have the same tones, else each by itself. */
export function laterBy(one: Heard, other: Heard): Estimate | undefined {
  if (one.late === undefined || other.late === undefined) return undefined;
  const value = one.late.value - other.late.value;
  const points = quotients(one, other);
  if (points.length === 0) return { value, error: Math.hypot(one.late.error, other.late.error) };
  const { delay, error } = straightThrough(points, value);
  return { value: delay, error };
}

/** The part of the weaker that pushes with the stronger must be so large to have a sign. */
const oneWay = 0.5;

/** The weaker programme of an input against the stronger. */
export function crosstalkOf(heard: readonly Heard[]): Crosstalk | undefined {
  const main = strongest(heard);
  const other = heard.find((one) => one !== main);
  if (main === undefined || other === undefined || !main.carried) return undefined;
  const least = Math.max(other.power.value, other.power.error, 1e-30);
  return { level: 10 * Math.log10(least / main.power.value), sign: signOf(main, other) };
}

function signOf(main: Heard, other: Heard): 1 | -1 | undefined {
  if (!other.carried || main.late === undefined) return undefined;
  const common = quotients(other, main);
  if (common.length === 0) return signOfTwo(main, other);
  let [sum, size] = [0, 0];
  for (const { re, im, weight } of common) {
    sum += weight * re;
    size += weight * Math.hypot(re, im);
  }
  return signFrom(sum, size);
}

/** Without common tones, from how each lies at the stronger one's delay. */
function signOfTwo(main: Heard, other: Heard): 1 | -1 | undefined {
  const late = main.late?.value ?? 0;
  const [own, by] = [main, other].map(({ points }) => {
    let [sum, size] = [0, 0];
    for (const point of points.map((one) => earlier(one, late))) {
      sum += point.weight * point.re * Math.hypot(point.re, point.im);
      size += point.weight * (point.re ** 2 + point.im ** 2);
    }
    return { sum, size };
  });
  return own && by && signFrom(own.sum * by.sum, own.size * by.size);
}

const signFrom = (sum: number, size: number): 1 | -1 | undefined => {
  if (Math.abs(sum) < oneWay * size) return undefined;
  return sum > 0 ? 1 : -1;
};
