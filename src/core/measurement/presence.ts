import type { Seconds } from "#core/units/units.ts";
import { stretches } from "./combs.ts";
import { type Look, powerAt } from "./look.ts";
import { segmentTime } from "./segments.ts";
import type { Row } from "./spectrum.ts";

/** Less power than this is none: a grid sample of silence is not quite nothing. */
const nothing = 1e-22;

/**
 * How far the combs stand out of what is between their tones, in each segment: the share of a tone in its power and that beside it, less the half which noise
 * makes of it, middle of all tones. Loud hum makes no more of it than one tone.
 */
export function presence(look: Look): Float64Array {
  const out = new Float64Array(look.length);
  const each = 1 / (look.combs.length * 2 * look.count);
  for (const [channel, combs] of look.combs.entries())
    for (const tones of combs)
      for (const [at, row] of tones.entries())
        out[at] = (out[at] ?? 0) + each * sharesIn(row, look.empty[channel]?.[at]);
  return out;
}

function sharesIn(row: Row, empty: Float64Array | undefined): number {
  let sum = 0;
  for (let k = 0; k < row.re.length; k += 1) {
    const [tone, beside] = [powerAt(row, k), empty?.[k] ?? 0];
    sum += tone + beside < nothing ? 0 : tone / (tone + beside) - 0.5;
  }
  return sum;
}

/** Where the signal begins, in seconds of the capture, and how well that fits. */
export interface Found {
  readonly start: Seconds;
  readonly score: number;
}

/** How much of a segment lies in one of the stretches, for a beginning. */
function shareInside(start: Seconds, at: number): number {
  const [from, to] = [at * segmentTime - start, (at + 1) * segmentTime - start];
  return stretches.reduce(
    (sum, stretch) =>
      sum + Math.max(0, Math.min(to, stretch.end) - Math.max(from, stretch.start)) / segmentTime,
    0,
  );
}

/** What stands out inside the stretches, less half of what does outside. */
function scoreAt(present: Float64Array, start: Seconds): number {
  let score = 0;
  for (const [at, value] of present.entries()) {
    const inside = shareInside(start, at);
    score += value * (1.5 * inside - 0.5);
  }
  return score;
}

const coarse: Seconds = segmentTime;
const fine: Seconds = segmentTime / 8;
const apart: Seconds = stretches[1].start - stretches[0].start;

/** The best beginning from one time up to another, in steps. */
function bestFrom(present: Float64Array, from: Seconds, to: Seconds, step: Seconds): Found {
  let best: Found = { start: from, score: Number.NEGATIVE_INFINITY };
  for (let start = from; start <= to; start += step) {
    const score = scoreAt(present, start);
    if (score > best.score) best = { start, score };
  }
  return best;
}

/**
 * Where the signal may begin, best first: right to about a segment. A capture of one stretch alone fits twice, as the first and as the
 * second.
 */
export function foundIn(present: Float64Array): readonly Found[] {
  const length = present.length * segmentTime;
  const { start: about } = bestFrom(present, -stretches[1].end, length, coarse);
  const best = bestFrom(present, about - coarse, about + coarse, fine);
  const others = [-apart, apart].map((by) => {
    const start = best.start + by;
    return { start, score: scoreAt(present, start) };
  });
  return [best, ...others.filter(({ score }) => score > 0.8 * best.score)];
}
