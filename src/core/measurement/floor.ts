import { sentCombs } from "./combs.ts";
import { gridRate } from "./grid.ts";
import { powerAt } from "./look.ts";
import { bins, row } from "./spectrum.ts";

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
  /** All of it up to the highest tone, as power of a sine's peak each hertz; hum and what distortion makes are not in it. */
  readonly whole: number;
}

function median(values: number[]): number {
  values.sort((a, b) => a - b);
  const half = values.length >> 1;
  return values.length % 2 === 1
    ? (values[half] ?? 0)
    : ((values[half - 1] ?? 0) + (values[half] ?? 0)) / 2;
}

/** The noise about each tone: the middle of the power in the empty bins beside it and its two neighbours, so that a line from elsewhere counts little. */
export function floorOf(second: Float64Array, count: number): Floor {
  let [sum, many] = [0, 0];
  const power = sentCombs.map((_, comb) => {
    const rows = (empty[comb] ?? []).map((begin) => bins(second, 0, begin, count));
    const out = row(count).re;
    for (let k = 0; k < count; k += 1) {
      const near: number[] = [];
      for (let at = Math.max(0, k - 1); at <= Math.min(count - 1, k + 1); at += 1)
        for (const one of rows) near.push(powerAt(one, at));
      out[k] = median(near) / medianShare;
      sum += out[k] ?? 0;
      many += 1;
    }
    return out;
  });
  return { power, whole: sum / (many || 1) };
}

/** A second on the grid has so many bins below half its rate. */
export const binsInAll: number = gridRate / 2;
