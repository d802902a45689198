import type { Hertz, Seconds } from "#core/units/units.ts";
import { apart, sentCombs } from "./combs.ts";
import type { Line } from "./entries.ts";
import { gridRate, period } from "./grid.ts";
import { powerAt } from "./look.ts";
import { inTime, type Row, row } from "./spectrum.ts";

/** One gain at its frequency, and its weight in a fit. */
export interface Point {
  readonly frequency: Hertz;
  readonly re: number;
  readonly im: number;
  readonly weight: number;
}

/** The gains of a line, each weighted by one over its noise; where there is next to none, by a trillionth of the strongest. */
export function pointsOf({ frequencies, gains, power }: Line): readonly Point[] {
  let strongest = 0;
  for (let at = 0; at < gains.re.length; at += 1)
    strongest = Math.max(strongest, powerAt(gains, at));
  const least = 1e-12 * strongest + Number.MIN_VALUE;
  return frequencies.map((frequency, at) => ({
    frequency,
    re: gains.re[at] ?? 0,
    im: gains.im[at] ?? 0,
    weight: 1 / ((power[at] ?? 0) + least),
  }));
}

/** A point as it would be, had everything come earlier by a delay. */
export function earlier(point: Point, delay: Seconds): Point {
  const angle = 2 * Math.PI * point.frequency * delay;
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return { ...point, re: point.re * c - point.im * s, im: point.re * s + point.im * c };
}

/** What a comb makes of points over one period of 8 ms, moved down by its lowest tone. */
export function combInTime(points: readonly Point[], comb: number, weigh = (_: Point) => 1): Row {
  const { begin, sent } = sentCombs[comb] ?? sentCombs[0];
  const tones = row(sent.re.length);
  for (const point of points) {
    const k = (point.frequency - begin) / apart;
    if (!Number.isInteger(k)) continue;
    tones.re[k] = weigh(point) * point.re;
    tones.im[k] = weigh(point) * point.im;
  }
  return inTime(tones);
}

/** The delay at which most of the points' energy comes, from nothing up to 8 ms, right to a grid sample: of each line by itself, added up. */
export function bulkOf(lines: readonly (readonly Point[])[]): Seconds {
  const energy = new Float64Array(period);
  for (const points of lines)
    for (const comb of [0, 1]) {
      const wave = combInTime(points, comb, ({ weight }) => Math.sqrt(weight));
      for (let p = 0; p < period; p += 1) energy[p] = (energy[p] ?? 0) + powerAt(wave, p);
    }
  return energy.indexOf(Math.max(...energy)) / gridRate;
}

/** Delay and phase at frequency nothing of a straight line through the phases. */
export interface Straight {
  readonly delay: Seconds;
  readonly error: Seconds;
  /** Radians, from −π to π, */
  readonly phase: number;
  /** and the standard deviation of that. */
  readonly phaseError: number;
}

const rounds = 6;

/** The straight line through the phases of points, each weighted by its power over its noise, about a delay. */
export function straightThrough(points: readonly Point[], about: Seconds): Straight {
  let [delay, phase, error, phaseError] = [about, 0, 0, 0];
  for (let round = 0; round < rounds; round += 1) {
    const here = points.map((point) => earlier(point, delay));
    if (round === 0) phase = phaseOf(here);
    const step = stepOf(here, phase);
    delay -= step.slope / (2 * Math.PI);
    phase += step.level;
    error = step.error / (2 * Math.PI);
    phaseError = step.levelError;
  }
  return { delay, error, phase: Math.atan2(Math.sin(phase), Math.cos(phase)), phaseError };
}

function phaseOf(points: readonly Point[]): number {
  let [re, im] = [0, 0];
  for (const { weight, ...point } of points) {
    re += weight * point.re;
    im += weight * point.im;
  }
  return Math.atan2(im, re);
}

/** One round: the line through what is left of the phases. */
function stepOf(points: readonly Point[], phase: number) {
  const [c, s] = [Math.cos(phase), Math.sin(phase)];
  let [w, f, ff, a, fa] = [0, 0, 0, 0, 0];
  for (const { frequency, re, im, weight } of points) {
    const [along, across] = [re * c + im * s, im * c - re * s];
    const by = weight * (re * re + im * im);
    const angle = Math.atan2(across, along);
    w += by;
    f += by * frequency;
    ff += by * frequency * frequency;
    a += by * angle;
    fa += by * frequency * angle;
  }
  const spread = ff - (f * f) / (w || 1);
  const slope = spread > 0 ? (fa - (f * a) / w) / spread : 0;
  // The angle of a gain has half its noise over its power as variance, and the weight is one over that noise.
  return {
    slope,
    level: w > 0 ? (a - slope * f) / w : 0,
    error: Math.sqrt(1 / (2 * (spread || 1))),
    levelError: Math.sqrt((1 / (w || 1) + (f / (w || 1)) ** 2 / (spread || 1)) / 2),
  };
}
