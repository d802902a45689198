import { apart, sentCombs } from "./combs.ts";
import { type Look, powerAt } from "./look.ts";
import { type Span, weightsOf } from "./pace.ts";
import { segmentTime } from "./segments.ts";
import { type Row, row } from "./spectrum.ts";

/** One segment of a stretch, the drift taken away. */
export interface Step {
  /** How much later it comes than the mean of all, seconds; right while small against a period of the highest tones. */
  readonly late: number;
  /** The part that is in phase with the segment two before: one where nothing happened between. */
  readonly agreement: number;
}

const frequencyOf = (comb: number, k: number) => (sentCombs[comb]?.begin ?? 0) + apart * k;

/** A segment's tones as they were on a clock without the drift. */
function straightened(tones: Row, comb: number, at: number, drift: number): Row {
  const out = { re: tones.re.slice(), im: tones.im.slice() };
  for (let k = 0; k < out.re.length; k += 1) {
    const angle = 2 * Math.PI * frequencyOf(comb, k) * drift * at * segmentTime;
    const [c, s, re, im] = [Math.cos(angle), Math.sin(angle), tones.re[k] ?? 0, tones.im[k] ?? 0];
    out.re[k] = re * c - im * s;
    out.im[k] = re * s + im * c;
  }
  return out;
}

function meanOf(rows: readonly Row[]): Row {
  const out = row(rows[0]?.re.length ?? 0);
  for (const { re, im } of rows)
    for (let k = 0; k < re.length; k += 1) {
      out.re[k] = (out.re[k] ?? 0) + (re[k] ?? 0) / rows.length;
      out.im[k] = (out.im[k] ?? 0) + (im[k] ?? 0) / rows.length;
    }
  return out;
}

/** One comb of one channel over a stretch. */
export interface Track {
  readonly channel: number;
  readonly comb: number;
  readonly rows: readonly Row[];
  readonly mean: Row;
  readonly weights: Float64Array;
}

/** All that was heard in a stretch, straightened. */
export const tracksOf = (look: Look, span: Span, drift: number): readonly Track[] =>
  look.combs.flatMap((combs, channel) => {
    const weights = weightsOf(look, channel, span);
    return combs.map((all, comb) => {
      const rows = all
        .slice(span.from, span.to)
        .map((tones, at) => straightened(tones, comb, span.from + at, drift));
      return { channel, comb, rows, mean: meanOf(rows), weights };
    });
  });

/** How one row lies along another, weighted: in phase, later, and what it would be in phase, were all of it. */
function along({ comb, weights }: Track, row: Row, other: Row) {
  let [inPhase, across, pull, sizes] = [0, 0, 0, 0];
  for (let k = 0; k < row.re.length; k += 1) {
    const [a, b, c, d] = [row.re[k] ?? 0, row.im[k] ?? 0, other.re[k] ?? 0, other.im[k] ?? 0];
    const [weight, pace] = [weights[k] ?? 0, -2 * Math.PI * frequencyOf(comb, k)];
    const power = c * c + d * d;
    inPhase += weight * (a * c + b * d);
    across += weight * pace * (b * c - a * d);
    pull += weight * pace * pace * power;
    sizes += weight * Math.sqrt(power * (a * a + b * b));
  }
  return { inPhase, across, pull, sizes };
}

/** How a stretch goes on, segment by segment. */
export const stepsOf = (tracks: readonly Track[]): readonly Step[] =>
  (tracks[0]?.rows ?? []).map((_, at) => {
    let [across, pull, inPhase, sizes] = [0, 0, 0, 0];
    for (const track of tracks) {
      const row = track.rows[at] ?? track.mean;
      const late = along(track, row, track.mean);
      const since = along(track, row, track.rows[at - 2] ?? row);
      across += late.across;
      pull += late.pull;
      inPhase += since.inPhase;
      sizes += since.sizes;
    }
    return { late: across / (pull || 1), agreement: inPhase / (sizes || 1) };
  });

/** Tones of a band, from one up to another. */
export interface Band {
  readonly from: number;
  readonly to: number;
}

/** How the gain of one comb goes on in a band, against the mean. */
export function courseOf({ rows, mean }: Track, { from, to }: Band): readonly number[] {
  return rows.map((row) => {
    let [along, size] = [0, 0];
    for (let k = from; k < Math.min(to, row.re.length); k += 1) {
      const [c, d] = [mean.re[k] ?? 0, mean.im[k] ?? 0];
      along += (row.re[k] ?? 0) * c + (row.im[k] ?? 0) * d;
      size += c * c + d * d;
    }
    return along / (size || 1);
  });
}

/** The mean power of a band. */
export function powerOf({ mean }: Track, { from, to }: Band): number {
  let sum = 0;
  for (let k = from; k < Math.min(to, mean.re.length); k += 1) sum += powerAt(mean, k);
  return sum;
}
