import { type Gridded, gridRate, period } from "./grid.ts";
import { bins, type Row } from "./spectrum.ts";

/** Short pieces of a capture, one after the other, on the grid: short enough that a clock wrong by 300 ppm turns no tone by half a turn in one. */
const segment: number = 8 * period;
export const segmentTime: number = segment / gridRate;

/** The comb that begins at a frequency, in whole segments of one channel, one after the other. */
export function segmentsOf(
  { channels, first }: Gridded,
  channel: number,
  begin: number,
  count: number,
): readonly Row[] {
  const samples = channels[channel] ?? new Float64Array();
  return Array.from({ length: Math.floor(samples.length / segment) }, (_, at) =>
    bins(samples.subarray(at * segment, (at + 1) * segment), first + at * segment, begin, count),
  );
}
