import { bulkOf, type Point } from "#core/measurement/delay.ts";
import { polarityOf } from "#core/measurement/polarity.ts";
import { combs } from "#core/signals/multitone.ts";
import { fromDecibels } from "#core/units/decibels.ts";
import { type Random, seeded } from "#core/units/random.ts";
import type { Seconds } from "#core/units/units.ts";
import { both, type Filter, highPass, lowPass } from "#tests/core/measurement/filters.ts";
import { bounds, errorsOf, measure, sentLevel } from "#tests/core/measurement/truth.ts";
import { unknown } from "#tests/core/measurement/unknown.ts";

/** What polarity is tried behind, and the ratio of a programme to the noise in decibels: a low-pass leaves less of the programme, and as much noise. */
export const behind: readonly {
  readonly name: string;
  readonly ratio: number;
  readonly filter: Filter;
}[] = [
  { name: "a wire", ratio: -10, filter: () => ({ re: 1, im: 0 }) },
  { name: "a coupling of 20 Hz", ratio: -10, filter: highPass(20) },
  { name: "a coupling of 150 Hz", ratio: -10, filter: highPass(150) },
  { name: "a low-pass of 4 kHz, eighth order", ratio: -10, filter: lowPass(4000, 8) },
  { name: "a low-pass of 1 kHz, eighth order", ratio: -10, filter: lowPass(1000, 8) },
  { name: "a low-pass of 1 kHz, second order", ratio: -10, filter: lowPass(1000, 2) },
  { name: "a low-pass of 300 Hz, eighth order", ratio: 0, filter: lowPass(300, 8) },
  {
    name: "a coupling of 80 Hz and a low-pass of 2 kHz, sixth order",
    ratio: 0,
    filter: both(highPass(80), lowPass(2000, 6)),
  },
];

/** A standard normal number (Box and Muller, 1958). */
const normal = (random: Random): number =>
  Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());

/** The gains as they come out of a capture of four seconds at 48 kHz, with noise of their own: what the whole measurement hands on to `polarityOf`. */
function pointsBehind(filter: Filter, ratio: number, late: Seconds, sign: number, random: Random) {
  const noise = sentLevel * fromDecibels(-ratio);
  return [...combs.left, ...combs.right]
    .map(({ frequency, peak }): Point => {
      const power = (4 * noise * noise) / (48_000 * 3.95 * fromDecibels(peak) ** 2);
      const { re, im } = filter(frequency);
      const angle = -2 * Math.PI * frequency * late;
      const [c, s, size] = [Math.cos(angle), Math.sin(angle), Math.sqrt(power / 2)];
      return {
        frequency,
        re: sign * (re * c - im * s) + size * normal(random),
        im: sign * (re * s + im * c) + size * normal(random),
        weight: 1 / power,
      };
    })
    .sort((a, b) => a.frequency - b.frequency);
}

/** How often polarity was told right, wrong, and not at all, over seeds. */
export function polarities(filter: Filter, ratio: number, times: number) {
  const counts = { right: 0, wrong: 0, refused: 0 };
  for (let seed = 0; seed < times; seed += 1) {
    const random = seeded(seed);
    const [late, sign] = [0.007 * random(), random() < 0.5 ? 1 : -1];
    const points = pointsBehind(filter, ratio, late, sign, random);
    const told = polarityOf(points, bulkOf([points]));
    if (told === undefined) counts.refused += 1;
    else counts[told === sign ? "right" : "wrong"] += 1;
  }
  return counts;
}

/** Three thousand times behind each, a line each; whether none was wrong. */
function soakPolarity(): boolean {
  return behind.reduce((well, { name, ratio, filter }) => {
    const { right, wrong, refused } = polarities(filter, ratio, 3000);
    console.log(
      `polarity behind ${name}, ${ratio} dB: ${right} right, ${wrong} wrong, ${refused} not told`,
    );
    return well && wrong === 0;
  }, true);
}

const meanSquare = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value * value, 0) / values.length;

/** The errors of unknown captures at one ratio against the Cramér-Rao bounds, a line; whether they keep theirs. */
function soakBound(ratio: number, seeds: number): boolean {
  const all = Array.from({ length: seeds }, (_, seed) => {
    const made = unknown(1000 * ratio + seed);
    const result = measure(made, ratio, seed);
    const errors = errorsOf(made, ratio, result);
    return {
      gains: errors.map(({ square, bound }) => Math.sqrt(square / bound)),
      parts: errors.flatMap(({ parts }) => parts),
      drift: (result.drift.value - made.drift) / 1e6 / bounds(made, ratio).drift,
    };
  });
  const gains = 10 * Math.log10(meanSquare(all.flatMap((one) => one.gains)));
  const stated = Math.sqrt(meanSquare(all.flatMap((one) => one.parts)));
  const drift = Math.sqrt(meanSquare(all.map((one) => one.drift)));
  console.log(
    `${ratio} dB, ${seeds} captures: gains ${gains.toFixed(2)} dB over the bound, ${stated.toFixed(3)} of the stated error; drift ${drift.toFixed(2)} of its bound`,
  );
  return gains < 1 && drift < 3;
}

/** `npm run soak -- measuring [seeds]`: gains and drift at their bounds from 0 to 60 dB, and polarity; whether all is as it should be. */
export function soakMeasuring(seeds: number): boolean {
  const bound = [0, 10, 20, 30, 40, 50, 60].map((ratio) => soakBound(ratio, seeds));
  return soakPolarity() && bound.every((well) => well);
}
