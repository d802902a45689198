import type { Probability } from "#core/units/units.ts";

/** What was stated, and whether it was right. */
export interface Stated {
  readonly stated: Probability;
  readonly right: boolean;
}

/** One bin of a reliability table. */
export interface Bin {
  readonly from: Probability;
  readonly count: number;
  /** The mean of what was stated, and how often it was right. */
  readonly stated: Probability;
  readonly true: Probability;
}

const bins = 10;

const meanOf = (numbers: readonly number[]): number =>
  numbers.reduce((sum, one) => sum + one, 0) / Math.max(1, numbers.length);

/** A reliability table in ten bins, of which those that nothing fell into are left out. */
export const reliability = (all: readonly Stated[]): readonly Bin[] =>
  Array.from({ length: bins }, (_, at) => {
    const some = all.filter(({ stated }) => Math.min(bins - 1, Math.floor(stated * bins)) === at);
    return {
      from: at / bins,
      count: some.length,
      stated: meanOf(some.map(({ stated }) => stated)),
      true: meanOf(some.map(({ right }) => Number(right))),
    };
  }).filter(({ count }) => count > 0);

/** The mean gap between stated and true, each bin by how many fell into it. */
export function weightedGap(table: readonly Bin[]): Probability {
  const all = table.reduce((sum, { count }) => sum + count, 0);
  return table.reduce(
    (sum, bin) => sum + (bin.count / Math.max(1, all)) * Math.abs(bin.stated - bin.true),
    0,
  );
}

/** The gap that chance alone makes on average where all that is stated is true: few in a bin scatter. */
export function gapByChance(table: readonly Bin[]): Probability {
  const all = table.reduce((sum, { count }) => sum + count, 0);
  return table.reduce((sum, { count, stated }) => {
    const scatter = Math.sqrt((2 * stated * (1 - stated)) / (Math.PI * count));
    return sum + (count / Math.max(1, all)) * scatter;
  }, 0);
}
