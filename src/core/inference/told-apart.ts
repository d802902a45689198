import { alike, gathered, members } from "./alike.ts";
import { dot, times } from "./estimate.ts";

/**
 * Merges answers whose likelihoods are in proportion, and beyond `most` those nearly so. A column has one likelihood for each
 * hypothesis, `weights` their probabilities. What is never answered is left out.
 */
export function toldApart(
  columns: readonly Float64Array[],
  weights: Float64Array,
  most: number,
): readonly Float64Array[] {
  const given = columns.filter((column) => dot(column, weights) > 0);
  const shapes = given.map((column) => [scaled(column, 1 / dot(column, weights))]);
  const first = summed(given, alike(shapes));
  if (first.length <= most) return first;
  const chances = first.map((column) => dot(column, weights));
  const beliefs = first.map((column) => [scaled(times(column, weights), 1 / dot(column, weights))]);
  return summed(first, gathered(beliefs, chances, most));
}

const scaled = (column: Float64Array, by: number): Float64Array => column.map((p) => p * by);

/** The columns of each group as one. */
const summed = (columns: readonly Float64Array[], groups: Int32Array): readonly Float64Array[] =>
  members(groups).map((group) => {
    const sum = new Float64Array(columns[0]?.length ?? 0);
    for (const one of group)
      for (let at = 0; at < sum.length; at++)
        sum[at] = (sum[at] as number) + (columns[one]?.[at] as number);
    return sum;
  });
