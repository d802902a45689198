import type { Seconds } from "#core/units/units.ts";
import { stretches } from "./combs.ts";
import { type Look, powerAt } from "./look.ts";
import { segmentTime } from "./segments.ts";
import type { Row } from "./spectrum.ts";
import { mean } from "./statistics.ts";

/** Less power than this is none: a grid sample of silence is not quite nothing. */
const nothing = 1e-22;

/** Tones are taken in groups of so many, since not all may come through. */
const group = 15;

/** How far a group stands out in a segment: the share of each tone in its power and that beside it, less the half which noise makes of it. */
function shareIn(row: Row, empty: Float64Array | undefined, from: number): number {
  const to = Math.min(from + group, row.re.length);
  let sum = 0;
  for (let k = from; k < to; k += 1) {
    const [tone, beside] = [powerAt(row, k), empty?.[k] ?? 0];
    sum += tone + beside < nothing ? 0 : tone / (tone + beside) - 0.5;
  }
  return sum / (to - from);
}

/** How each group goes on. */
const coursesIn = (look: Look): readonly (readonly number[])[] =>
  look.combs.flatMap((combs, channel) =>
    combs.flatMap((rows) =>
      Array.from({ length: Math.ceil(look.count / group) }, (_, at) =>
        rows.map((row, segment) => shareIn(row, look.empty[channel]?.[segment], at * group)),
      ),
    ),
  );

/**
 * How far the combs stand out of what is between their tones, in each segment, from nothing to a half: of all groups of tones, each weighted by
 * how far it stands out on the whole. Loud hum makes no more of it than one tone.
 */
export function presence(look: Look): Float64Array {
  const out = new Float64Array(look.length);
  let all = 0;
  for (const course of coursesIn(look)) {
    const weight = Math.max(0, mean(course));
    for (const [at, value] of course.entries()) out[at] = (out[at] ?? 0) + weight * value;
    all += weight;
  }
  return out.map((value) => value / (all || 1));
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
