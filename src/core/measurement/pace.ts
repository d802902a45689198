import { apart, sentCombs, stretches } from "./combs.ts";
import { type Look, powerAt } from "./look.ts";
import { segmentTime } from "./segments.ts";
import { type Row, row } from "./spectrum.ts";

/** How much faster than the nominal the signal passes in the capture, at most: the search goes so far. */
const most = 330e-6;
/** Segments are compared so far apart, one after the other: each tells more exactly what the one before told roughly. */
const lags = [1, 2, 4, 8, 16, 32, 48];
const guard = 0.1;

/** Segments that lie in a stretch, from one up to another. */
export interface Span {
  readonly from: number;
  readonly to: number;
}

/** The segments of a look that lie in the steady part of each stretch, for a beginning in seconds of the capture. */
export const spansOf = (look: Look, start: number): readonly Span[] =>
  stretches.map((stretch) => ({
    from: Math.max(0, Math.ceil((start + stretch.start + guard) / segmentTime)),
    to: Math.min(look.length, Math.floor((start + stretch.end - guard) / segmentTime)),
  }));

/** One channel over one span, and what each tone's place counts there. */
interface Part {
  readonly channel: number;
  readonly span: Span;
  readonly weights: Float64Array;
}

const partsOf = (look: Look, spans: readonly Span[]): readonly Part[] =>
  look.combs.flatMap((_, channel) =>
    spans.map((span) => ({ channel, span, weights: weightsOf(look, channel, span) })),
  );

/** Of each tone the products of segments so far apart, weighted by what is beside it. */
function products(look: Look, parts: readonly Part[], lag: number): readonly [Row, Row] {
  const out = [row(look.count), row(look.count)] as const;
  for (const { channel, span, weights } of parts)
    for (const [comb, tones] of (look.combs[channel] ?? []).entries())
      addProducts(out[comb] ?? out[0], tones, span, lag, weights);
  return out;
}

function addProducts(
  out: Row,
  tones: readonly Row[],
  { from, to }: Span,
  lag: number,
  by: Float64Array,
) {
  for (const [at, one] of tones.slice(from, Math.max(from, to - lag)).entries())
    addProduct(out, one, tones[from + at + lag] ?? one, by);
}

function addProduct(out: Row, one: Row, other: Row, by: Float64Array): void {
  for (let k = 0; k < out.re.length; k += 1) {
    const [a, b, c, d] = [one.re[k] ?? 0, one.im[k] ?? 0, other.re[k] ?? 0, other.im[k] ?? 0];
    out.re[k] = (out.re[k] ?? 0) + (by[k] ?? 0) * (a * c + b * d);
    out.im[k] = (out.im[k] ?? 0) + (by[k] ?? 0) * (a * d - b * c);
  }
}

/**
 * One over the power beside each tone. A tone so pure that nothing is beside it weighs as if a millionth of the strongest were; where there is
 * nothing at all, nothing counts.
 */
export function weightsOf(look: Look, channel: number, { from, to }: Span): Float64Array {
  const sum = new Float64Array(look.count);
  for (const empty of look.empty[channel]?.slice(from, to) ?? [])
    for (let k = 0; k < sum.length; k += 1) sum[k] = (sum[k] ?? 0) + (empty[k] ?? 0) / (to - from);
  const strongest = Math.max(
    ...(look.combs[channel] ?? []).map((rows) => strongestIn(rows.slice(from, to))),
  );
  return strongest === 0 ? sum : sum.map((power) => 1 / (power + 1e-6 * strongest));
}

function strongestIn(rows: readonly Row[]): number {
  let most = 0;
  for (const row of rows)
    for (let k = 0; k < row.re.length; k += 1) most = Math.max(most, powerAt(row, k));
  return most;
}

/** How well products fit a clock that runs so much faster. */
function fitOf(pairs: readonly Row[], lag: number, drift: number): number {
  let sum = 0;
  for (const [comb, pair] of pairs.entries())
    for (let k = 0; k < pair.re.length; k += 1) {
      const frequency = (sentCombs[comb]?.begin ?? 0) + apart * k;
      const angle = 2 * Math.PI * frequency * drift * lag * segmentTime;
      sum += (pair.re[k] ?? 0) * Math.cos(angle) - (pair.im[k] ?? 0) * Math.sin(angle);
    }
  return sum;
}

/** Root mean square of the frequencies that carry the products: how fast they turn. */
function middle(pairs: readonly Row[]): number {
  let [sum, all] = [0, 0];
  for (const [comb, pair] of pairs.entries())
    for (let k = 0; k < pair.re.length; k += 1) {
      const weight = Math.sqrt(powerAt(pair, k));
      sum += weight * ((sentCombs[comb]?.begin ?? 0) + apart * k) ** 2;
      all += weight;
    }
  return Math.sqrt(sum / (all || 1)) || apart;
}

const points = 16;

/** The best drift within some reach, refined between the points by a parabola. */
function best(pairs: readonly Row[], lag: number, about: number, reach: number): number {
  const step = reach / points;
  const fits = Array.from({ length: 2 * points + 1 }, (_, at) =>
    fitOf(pairs, lag, about + (at - points) * step),
  );
  const at = fits.indexOf(Math.max(...fits));
  const [before = 0, here = 0, after = 0] = [fits[at - 1], fits[at], fits[at + 1]];
  const inside = at > 0 && at < 2 * points;
  const bend = before + after - 2 * here;
  const by = inside && bend < 0 ? (before - after) / (2 * bend) : 0;
  return Math.max(-most, Math.min(most, about + (at - points + by) * step));
}

/**
 * How much the capture's clock is faster than the signal's, as a part of one, from how the tones turn from segment to segment: about a
 * hundredth of a millionth where they stand well out of the noise. `longest` limits how far apart segments are compared.
 */
export function driftOf(look: Look, spans: readonly Span[], longest: number): number {
  let drift = 0;
  const parts = partsOf(look, spans);
  for (const lag of lags.filter((one) => one <= longest)) {
    const pairs = products(look, parts, lag);
    const reach = 0.3 / (middle(pairs) * lag * segmentTime);
    drift = best(pairs, lag, drift, Math.min(most, reach));
  }
  return drift;
}
