import type { Capture } from "./capture.ts";
import { countAt, sentCombs } from "./combs.ts";
import { gridRate } from "./grid.ts";
import { onGrid } from "./resample.ts";
import { segmentsOf } from "./segments.ts";
import type { Row } from "./spectrum.ts";

/** A first look at a capture, as if both clocks were the same and the signal began with the capture. */
export interface Look {
  /** Of each channel both combs, segment by segment, */
  readonly combs: readonly (readonly [readonly Row[], readonly Row[]])[];
  /** and how much power, at each tone's place, lies halfway to the next tones. */
  readonly empty: readonly (readonly Float64Array[])[];
  /** How many segments. */
  readonly length: number;
  /** How many tones of each comb. */
  readonly count: number;
}

/** Halfway between a tone of one comb and that of the other. */
const between = 131;

export const powerAt = ({ re, im }: Row, k: number): number =>
  (re[k] ?? 0) ** 2 + (im[k] ?? 0) ** 2;

/** Looks at a capture once. */
export function lookAt(capture: Capture): Look {
  const seconds = (capture.channels[0]?.length ?? 0) / capture.rate;
  const gridded = onGrid(capture, { start: 0, pace: 1 }, 0, Math.floor(seconds * gridRate));
  const count = countAt(capture.rate);
  const [first, second] = sentCombs;
  const combs = capture.channels.map(
    (_, channel) =>
      [
        segmentsOf(gridded, channel, first.begin, count),
        segmentsOf(gridded, channel, second.begin, count),
      ] as const,
  );
  const empty = capture.channels.map((_, channel) =>
    segmentsOf(gridded, channel, between, count).map((tones) =>
      Float64Array.from(tones.re, (_, k) => powerAt(tones, k)),
    ),
  );
  return { combs, empty, length: empty[0]?.length ?? 0, count };
}
