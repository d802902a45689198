import type { Seconds } from "#core/units/units.ts";
import { sentCombs } from "./combs.ts";
import { combInTime, earlier, type Point, straightThrough } from "./delay.ts";
import { gridRate, period, wrapped } from "./grid.ts";

/** A phase at frequency nothing that is further than this from both polarities tells neither. */
const sure = Math.PI / 3;
/** What is so many standard deviations off is no chance. */
const beyondChance = 4;

/** Gains under their noise count little, those far above it fully. */
const share = ({ re, im, weight }: Point): number => {
  const over = (re * re + im * im) * weight;
  return over / (over + 1);
};

/** The correlation at a time from that by which the points were made earlier. */
function correlation(points: readonly Point[], time: Seconds): number {
  let sum = 0;
  for (const point of points) {
    const angle = 2 * Math.PI * point.frequency * time;
    sum += share(point) * (point.re * Math.cos(angle) - point.im * Math.sin(angle));
  }
  return sum;
}

/** The correlation over one period of a comb, grid sample by grid sample. */
function correlations(points: readonly Point[]): Float64Array {
  const out = new Float64Array(period);
  for (const [comb, { begin }] of sentCombs.entries()) {
    const { re, im } = combInTime(points, comb, share);
    for (let p = 0; p < period; p += 1) {
      const angle = (2 * Math.PI * begin * fromMiddle(p)) / gridRate;
      out[p] = (out[p] ?? 0) + (re[p] ?? 0) * Math.cos(angle) - (im[p] ?? 0) * Math.sin(angle);
    }
  }
  return out;
}

/** Half of the period comes before. */
const fromMiddle = (p: number): number => wrapped(p + period / 2, period) - period / 2;

/** The largest correlation of one sign, looked for between grid samples about its largest ones. */
function largest(points: readonly Point[], coarse: Float64Array, sign: 1 | -1): number {
  const tops = [...coarse.keys()]
    .sort((a, b) => sign * ((coarse[b] ?? 0) - (coarse[a] ?? 0)))
    .slice(0, 3);
  const fine = tops.flatMap((p) =>
    Array.from({ length: 9 }, (_, at) => (fromMiddle(p) + (at - 4) / 4) / gridRate),
  );
  return Math.max(...fine.map((time) => sign * correlation(points, time)));
}

/** The sign of the largest peak of the correlation with what was sent, over 8 ms about a delay; nothing where noise may have made it. */
function peakSign(points: readonly Point[], about: Seconds): 1 | -1 | undefined {
  const here = points.map((point) => earlier(point, about));
  const coarse = correlations(here);
  const ahead = largest(here, coarse, 1) - largest(here, coarse, -1);
  const noise = Math.sqrt(here.reduce((sum, one) => sum + share(one) ** 2 / (2 * one.weight), 0));
  if (Math.abs(ahead) < beyondChance * Math.SQRT2 * noise) return undefined;
  return ahead > 0 ? 1 : -1;
}

/**
 * Whether a programme comes as it was sent or upside down: the phase taken to frequency nothing, each tone weighted by its power, and
 * the sign of the largest correlation. Nothing where they differ (a plain line through the phases is wrong behind a steep low-pass;
 * Handbook, section 7), or where chance may have decided either.
 */
export function polarityOf(points: readonly Point[], about: Seconds): 1 | -1 | undefined {
  const { delay, phase, phaseError } = straightThrough(points, about);
  const off = Math.abs(phase);
  if (beyondChance * phaseError > Math.PI / 3 || (off > sure && off < Math.PI - sure))
    return undefined;
  const straight = off <= sure ? 1 : -1;
  return straight === peakSign(points, delay) ? straight : undefined;
}
