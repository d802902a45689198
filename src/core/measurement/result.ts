import type { Decibels, Seconds } from "#core/units/units.ts";
import type { Aligned } from "./aligned.ts";
import { pivot } from "./clock.ts";
import { apart, sentCombs } from "./combs.ts";
import { earlier, pointsOf } from "./delay.ts";
import { distortionOf } from "./distortion.ts";
import { lineOf } from "./entries.ts";
import { humIn } from "./hum.ts";
import { withHum } from "./hum-on-tones.ts";
import { powerAt } from "./look.ts";
import type { Estimate, Gain, Hum, Input, Response, ReturnMeasurement } from "./return.ts";
import { mean } from "./statistics.ts";
import { crosstalkOf, entryOf, type Heard, heardOf, laterBy, strongest } from "./summary.ts";

const stretchesIn = (all: Aligned): readonly number[] => [
  ...new Set(all.all.map(({ received }) => received.stretch)),
];

/** What each input heard of both programmes, and the hum there. */
export interface HeardAll {
  readonly hums: readonly (Hum | undefined)[];
  readonly heard: readonly (readonly Heard[])[];
}

/** Each input by its programmes, hum counted as noise. */
export function heardIn(all: Aligned): HeardAll {
  const which = stretchesIn(all);
  const hums = all.late.map(({ late }, input) => humIn(all.gridded, input, which, late));
  const humming = all.all.map(({ received, floor }) => ({
    received,
    floor: withHum(floor, hums[received.input]),
  }));
  const heard = all.late.map(({ late }, input) =>
    [0, 1].map((programme) => {
      const line = lineOf(humming, input, programme);
      return heardOf(line, pointsOf(line), late);
    }),
  );
  return { hums, heard };
}

/** All that an aligned capture says. */
export function resultOf(
  all: Aligned,
  { hums, heard }: HeardAll,
  count: number,
): ReturnMeasurement {
  const which = stretchesIn(all);
  const delay = strongest(heard.flat())?.late ?? { value: all.late[0]?.late ?? 0, error: 0 };
  return {
    stretches:
      which.length === 2 ? "both" : ((["first", "second"] as const)[which[0] ?? 0] ?? "both"),
    responses: responsesOf(all, heard, delay.value),
    entries: heard.map((row) => row.map((one) => entryOf(one, delay.value))),
    inputs: heard.map((row, input) => inputOf(all, row, input, hums[input], count)),
    delay: delayOf(all, delay),
    between: betweenOf(heard),
    drift: { value: (all.clock.pace - 1) * 1e6, error: all.drift.error * 1e6 },
  };
}

/** From the grid to the capture's own time; the drift's error counts from the pivot. */
const delayOf = ({ clock, drift }: Aligned, { value, error }: Estimate): Estimate => ({
  value: clock.start + clock.pace * value,
  error: Math.hypot(error, pivot * drift.error),
});

/** How much later the right programme comes than the left. */
function betweenOf(heard: readonly (readonly Heard[])[]): Estimate | undefined {
  const [left, right] = [0, 1].map((programme) =>
    strongest(heard.flatMap((row) => row[programme] ?? [])),
  );
  return left && right && laterBy(right, left);
}

/** Every tone's gains, each programme's where it was heard. */
function responsesOf(
  all: Aligned,
  heard: readonly (readonly Heard[])[],
  delay: Seconds,
): readonly Response[] {
  const gains = new Map<number, (Gain | undefined)[][]>();
  for (const [input, row] of heard.entries())
    for (const [programme, { line, points }] of row.entries())
      for (const [at, point] of points.entries()) {
        const known = gains.get(point.frequency) ?? heard.map(() => [undefined, undefined]);
        const { re, im } = earlier(point, delay);
        const away = (middleOf(all, line.from[at] ?? 0) - pivot) * all.drift.error;
        const turned = Math.hypot(re, im) * 2 * Math.PI * point.frequency * away;
        const error = Math.sqrt((line.power[at] ?? 0) / 2 + turned ** 2 / 2);
        (known[input] ?? [])[programme] = { re, im, error };
        gains.set(point.frequency, known);
      }
  return [...gains].sort(([a], [b]) => a - b).map(([frequency, of]) => ({ frequency, gains: of }));
}

const middleOf = ({ all }: Aligned, stretch: number): Seconds =>
  all.find(({ received }) => received.stretch === stretch)?.received.folded.middle ?? pivot;

function inputOf(
  { all }: Aligned,
  row: readonly Heard[],
  input: number,
  hum: Hum | undefined,
  count: number,
): Input {
  const own = all.filter(({ received }) => received.input === input);
  const [one] = own;
  const top = (sentCombs[1].begin ?? 0) + apart * (count - 1);
  // A bin's peak is squared and doubled in the mean of so many seconds.
  const noise = mean(
    own.map(({ received, floor }) => (floor.whole * received.folded.seconds * top) / 2),
  );
  const tones = mean(own.map(({ received }) => tonesIn(received.tones)));
  const withTones = row.some(({ carried }) => carried);
  const least = 1e-30;
  return {
    tones: 10 * Math.log10(tones + least),
    noise: 10 * Math.log10(noise + least),
    signalToNoise: 10 * Math.log10((tones + least) / (noise + least)),
    crosstalk: crosstalkOf(row),
    hum,
    distortion: withTones && one ? distortionOf(one.received, one.floor) : undefined,
  };
}

/** The mean square of all tones; each is a peak. */
const tonesIn = (combs: Aligned["all"][number]["received"]["tones"]): number =>
  combs.flatMap((tones) => [...tones.re.keys()].map((k) => powerAt(tones, k) / 2)).reduce(plus, 0);

const plus = (a: number, b: number): number => a + b;

const group = 15;

/** The tones that are clearest, fifteen of a comb, against the noise about them: decibels. */
export function clearestOf({ all }: Aligned): Decibels {
  const ratios = all.flatMap(({ received: { tones, folded }, floor }) =>
    tones.flatMap((row, comb) => {
      const noise = floor.power[comb] ?? new Float64Array();
      const each = [...noise.keys()].map((k) => powerAt(row, k) - (noise[k] ?? 0));
      // Two combs: each tone has half of what lies between two of its own to itself.
      const width = (folded.seconds * apart) / 2;
      return Array.from({ length: Math.ceil(noise.length / group) }, (_, at) => {
        const [from, to] = [at * group, (at + 1) * group];
        const own = each.slice(from, to).reduce(plus, 0);
        return own / (width * noise.slice(from, to).reduce(plus, 0) + 1e-30);
      });
    }),
  );
  return 10 * Math.log10(Math.max(1e-30, ...ratios));
}
