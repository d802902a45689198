/**
 * What is kept of a window against the baseline, by place in a row of numbers. Tones are weighted by the root of their share in their side's power, so that
 * plain sums of squares weigh them by what they are worth against noise.
 */
export const place = {
  /** By how much the size of each tone on its own channel is off, weighted: left, left, right, right. */
  own: 0,
  /** What comes over on the other channel and did not before, complex, weighted: left's two tones, then right's. */
  over: 4,
  /** The power of each side on its own channel, and on the other; noise with it. */
  power: 12,
  overPower: 14,
  /** Each side's level on its own channel, one is healthy; and what comes over, signed: below zero in antiphase. */
  level: 16,
  signed: 18,
  /** How far the worst of it is off. */
  deviation: 20,
} as const;

/** The first so many are the deviation as a vector. */
export const dimensions = 12;
const width = 21;

/** How many windows are kept: 64 ms. */
const kept = 128;

/** The last windows, by their number. */
export class FlexRecords {
  readonly values = new Float64Array(kept * width);

  /** Where a window's row begins. */
  row(hop: number): number {
    return (hop % kept) * width;
  }

  at(hop: number, which: number): number {
    return this.values[this.row(hop) + which] as number;
  }

  deviation(hop: number): number {
    return this.at(hop, place.deviation);
  }

  /** The largest deviation of some windows, both ends with them. */
  most(from: number, to: number): number {
    let most = 0;
    for (let hop = from; hop <= to; hop += 1) most = Math.max(most, this.deviation(hop));
    return most;
  }
}
