import { sentCombs } from "./combs.ts";
import { powerAt } from "./look.ts";
import { bins, type Row } from "./spectrum.ts";
import { mean, median } from "./statistics.ts";

/**
 * Frequencies near a tone, from the lowest of its comb, where nothing falls: no tone, no product of second or third order of tones, no whole
 * multiple of 50 or 60 Hz.
 */
const empty: readonly (readonly number[])[] = [
  [83, 88, 92, 94, 97, 103, 106, 108, 114, 117],
  [143, 147, 151, 156, 158, 166, 168, 171, 178, 182],
];

/** How the power of noise lies about its middle value: the median of a sum of two squares. */
const medianShare = Math.LN2;

/** Noise in a folded second: at each tone of a comb, the mean power of one bin. */
export interface Floor {
  readonly power: readonly Float64Array[];
  /** The mean over all tones. */
  readonly whole: number;
}

/** The middle power of the empty bins beside one tone and its two neighbours. */
function aboutTone(rows: readonly Row[], k: number): number {
  const near = [k - 1, k, k + 1].filter((at) => at >= 0 && at < (rows[0]?.re.length ?? 0));
  return median(rows.flatMap((row) => near.map((at) => powerAt(row, at)))) / medianShare;
}

/** The noise about each tone, of the middle of what is in the empty bins: a line from elsewhere counts little. */
export function floorOf(second: Float64Array, count: number): Floor {
  const power = sentCombs.map((_, comb) => {
    const rows = (empty[comb] ?? []).map((begin) => bins(second, 0, begin, count));
    return Float64Array.from({ length: count }, (_, k) => aboutTone(rows, k));
  });
  return { power, whole: mean(power.flatMap((one) => [...one])) };
}
