import type { Hertz, Seconds } from "#core/units/units.ts";
import { apart, combOf, sentCombs, stretches } from "./combs.ts";
import { type Floor, floorOf } from "./floor.ts";
import { type Fold, fold } from "./fold.ts";
import type { Gridded } from "./grid.ts";
import { bins, type Row, row } from "./spectrum.ts";

/** One stretch of one input, folded: both combs as they came in. */
export interface Received {
  readonly input: number;
  readonly stretch: number;
  readonly folded: Fold;
  readonly tones: readonly [Row, Row];
  /** By how much each grew in a second. */
  readonly growth: readonly [Row, Row];
}

/** After the swell, so long until what rings has died away; before the end, so much to spare. */
const settling: Seconds = 0.02;

/** Folds a stretch of an input that is so much later than the grid, with so much to spare at both ends. */
export function received(
  gridded: Gridded,
  input: number,
  stretch: number,
  count: number,
  { late, spare }: { readonly late: Seconds; readonly spare: Seconds },
): Received {
  const { start, end } = stretches[stretch] ?? stretches[0];
  const inside = settling + spare;
  const folded = fold(gridded, input, start + late + inside, end + late - inside);
  const [first, second] = sentCombs;
  const both = (samples: Float64Array) =>
    [bins(samples, 0, first.begin, count), bins(samples, 0, second.begin, count)] as const;
  return { input, stretch, folded, tones: both(folded.mean), growth: both(folded.slope) };
}

/** The gains from one programme to one input, in order of frequency; the phases are those of the grid. */
export interface Line {
  readonly frequencies: readonly Hertz[];
  readonly gains: Row;
  /** The mean square of a gain's error, both parts together. */
  readonly power: Float64Array;
  /** Which stretch each was measured in. */
  readonly from: readonly number[];
}

/** Both stretches' gains from a programme to an input. What was received, with its noise. */
export function lineOf(
  all: readonly { readonly received: Received; readonly floor: Floor }[],
  input: number,
  programme: number,
): Line {
  const parts = all
    .filter(({ received }) => received.input === input)
    .flatMap(({ received: { stretch, tones }, floor }) => {
      const comb = combOf(programme, stretch);
      const { begin, sent } = sentCombs[comb] ?? sentCombs[0];
      const here = tones[comb] ?? tones[0];
      return Array.from(here.re, (re, k) => ({
        frequency: begin + apart * k,
        stretch,
        ...overSent({ re, im: here.im[k] ?? 0 }, sent, k, floor.power[comb]?.[k] ?? 0),
      }));
    })
    .sort((a, b) => a.frequency - b.frequency);
  const gains = row(parts.length);
  for (const [at, { re, im }] of parts.entries()) {
    gains.re[at] = re;
    gains.im[at] = im;
  }
  return {
    frequencies: parts.map(({ frequency }) => frequency),
    gains,
    power: Float64Array.from(parts, ({ power }) => power),
    from: parts.map(({ stretch }) => stretch),
  };
}

function overSent(tone: { re: number; im: number }, sent: Row, k: number, power: number) {
  const [c, d] = [sent.re[k] ?? 0, sent.im[k] ?? 0];
  const size = c * c + d * d;
  return {
    re: (tone.re * c + tone.im * d) / size,
    im: (tone.im * c - tone.re * d) / size,
    power: power / size,
  };
}

/** What was received in each stretch, with its noise. */
export const withFloor = (one: Received, count: number) => ({
  received: one,
  floor: floorOf(one.folded.mean, count),
});
