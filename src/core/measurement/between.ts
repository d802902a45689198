import type { Seconds } from "#core/units/units.ts";
import { apart, sentCombs } from "./combs.ts";
import { combInTime, earlier, type Point } from "./delay.ts";
import { gridRate, period } from "./grid.ts";
import type { NotMeasured } from "./return.ts";
import type { Heard } from "./summary.ts";

/*
 * What was lost or put in while nothing sounds, between the two stretches: then the second comes later or earlier than the first. A programme's tones
 * of the one lie between those of the other, so that each of the second stretch has the first one's on both sides to be held against.
 */

/** So many periods of 8 ms either way are tried. */
const most = 14;
/** What is so many standard deviations better is no chance, */
const sure = 6;
/** and what fits so much better than no gap is none that a filter makes. */
const better = 1.15;

/** Tones of the second stretch against the mean of the first one's two beside them, had all come earlier by the line's delay. */
function againstFirst({ line, points, late }: Heard): readonly Point[] {
  const here = points.map((point) => earlier(point, late?.value ?? 0));
  return here.flatMap((point, at) => {
    const [below, above] = [here[at - 1], here[at + 1]];
    if (line.from[at] !== 1 || below === undefined || above === undefined) return [];
    if (above.frequency - below.frequency !== apart) return [];
    const [re, im] = [(below.re + above.re) / 2, (below.im + above.im) / 2];
    const noise = 1 / point.weight + (1 / below.weight + 1 / above.weight) / 4;
    return [
      {
        frequency: point.frequency,
        re: point.re * re + point.im * im,
        im: point.im * re - point.re * im,
        weight: 1 / noise,
      },
    ];
  });
}

/** How well the second stretch fits the first, had it come so many grid samples late: largest where it does. */
function fitsOf(points: readonly Point[]): (late: number) => number {
  const rows = sentCombs.map(({ begin }, comb) => ({
    begin,
    row: combInTime(points, comb, ({ weight }) => weight),
  }));
  return (late) => {
    const p = ((late % period) + period) % period;
    return rows.reduce((sum, { begin, row }) => {
      const angle = (2 * Math.PI * begin * late) / gridRate;
      return sum + (row.re[p] ?? 0) * Math.cos(angle) - (row.im[p] ?? 0) * Math.sin(angle);
    }, 0);
  };
}

/** The time by which the second stretch surely comes later or earlier than the first, as a refusal for gaps: of all that carries something. */
export function gapBetween(heard: readonly Heard[]): NotMeasured | undefined {
  const lines = heard.filter(({ carried }) => carried).map(againstFirst);
  const fits = lines.map(fitsOf);
  const fitAt = (late: number): number => fits.reduce((sum, one) => sum + one(late), 0);
  // A product of two gains has about the noise of one times the size of the other.
  const noise = Math.sqrt(
    lines.flat().reduce((sum, { re, im, weight }) => sum + weight * Math.hypot(re, im) + 1, 0),
  );
  const straight = fitAt(0);
  let best = { late: 0, fit: straight };
  for (let late = -most * period; late <= most * period; late += 1) {
    const own = fitAt(late);
    if (own > best.fit) best = { late, fit: own };
  }
  const surely = best.fit - straight > sure * noise && best.fit > better * straight;
  const measured: Seconds = Math.abs(best.late) / gridRate;
  return surely ? { refused: "gaps", measured, bound: 0.5 / gridRate } : undefined;
}
