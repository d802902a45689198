/** The middle one of some numbers. */
export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const half = sorted.length >> 1;
  const [below = 0, above = 0] = [sorted[half - 1], sorted[half]];
  return sorted.length % 2 === 1 ? above : (below + above) / 2;
}

export const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / Math.max(1, values.length);

/** The standard deviation of numbers that go slowly up and down, from how far neighbours are apart; a few outliers count little. */
export function jitter(values: readonly number[]): number {
  const steps = values.slice(1).map((value, at) => Math.abs(value - (values[at] ?? 0)));
  return median(steps) / (0.6745 * Math.SQRT2);
}
