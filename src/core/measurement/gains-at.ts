import type { Hertz, Seconds } from "#core/units/units.ts";
import { earlier, type Point } from "./delay.ts";
import type { Gain, ReturnMeasurement } from "./return.ts";

/** Tones so near tell the gain at a frequency: some four on either side. */
const near: Hertz = 260;

/**
 * The gains at a frequency, `gains[input][programme]`: the straight line through the tones nearby, each weighted by its error, after the delay of the
 * entry is taken away; its phase is that of the measurement's `delay`. Nothing where fewer than three tones are near.
 */
export const gainsAt = (
  { responses, entries }: ReturnMeasurement,
  frequency: Hertz,
): readonly (readonly (Gain | undefined)[])[] =>
  entries.map((row, input) =>
    row.map(({ late }, programme) => {
      const delay = late?.value ?? 0;
      const points = responses
        .filter((response) => Math.abs(response.frequency - frequency) <= near)
        .flatMap((response) => {
          const gain = response.gains[input]?.[programme];
          if (gain === undefined) return [];
          const weight = 1 / (gain.error ** 2 + 1e-30);
          return [earlier({ frequency: response.frequency, ...gain, weight }, delay)];
        });
      return points.length < 3 ? undefined : lineAt(points, frequency, delay);
    }),
  );

function lineAt(points: readonly Point[], frequency: Hertz, delay: Seconds): Gain {
  let [w, x, xx] = [0, 0, 0];
  for (const point of points) {
    const away = point.frequency - frequency;
    w += point.weight;
    x += point.weight * away;
    xx += point.weight * away * away;
  }
  const spread = w * xx - x * x;
  let [re, im] = [0, 0];
  for (const point of points) {
    const by = (point.weight * (xx - x * (point.frequency - frequency))) / spread;
    re += by * point.re;
    im += by * point.im;
  }
  const there = earlier({ frequency, re, im, weight: 1 }, -delay);
  return { re: there.re, im: there.im, error: Math.sqrt(xx / spread) };
}
