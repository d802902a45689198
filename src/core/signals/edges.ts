import { fromDecibels } from "#core/units/decibels.ts";
import type { Hertz, Seconds } from "#core/units/units.ts";

/** Sound is looked at in pieces this long. */
const piece: Seconds = 0.001;

/** A piece that stays below this counts as silent (-80 dBFS; common practice, no source). */
const silent = fromDecibels(-80);

/**
 * The greatest part of its peak that a channel may reach within the first or last millisecond of sounding. A
 * raised-cosine ramp of 10 ms reaches a tenth of it in two; a tone cut off reaches all (common practice, no source).
 */
export const edgeRise = 0.25;

/**
 * How abruptly a channel begins or ends, at worst: greatest sample of any millisecond next to a silent one, as a part of
 * the channel's peak. Before and after the channel is silence. Zero for silence.
 */
export function steepestEdge(channel: Float32Array, rate: Hertz): number {
  const peaks = [0, ...piecePeaks(channel, Math.max(1, Math.round(piece * rate))), 0];
  const whole = greatest(peaks);
  const edges = peaks.filter(
    (_, at) => (peaks[at - 1] ?? 1) < silent || (peaks[at + 1] ?? 1) < silent,
  );
  return whole < silent ? 0 : greatest(edges) / whole;
}

function piecePeaks(channel: Float32Array, width: number): number[] {
  const peaks: number[] = [];
  for (let first = 0; first < channel.length; first += width) {
    peaks.push(greatest(channel.subarray(first, first + width)));
  }
  return peaks;
}

function greatest(values: ArrayLike<number>): number {
  let most = 0;
  for (let at = 0; at < values.length; at += 1) most = Math.max(most, Math.abs(values[at] ?? 0));
  return most;
}
