import type { Seconds } from "#core/units/units.ts";
import { type Aligned, aligned, wholeIn } from "./aligned.ts";
import { gapBetween } from "./between.ts";
import type { Capture } from "./capture.ts";
import { countAt, stretches } from "./combs.ts";
import { goingOn } from "./going-on.ts";
import type { Clock } from "./grid.ts";
import { lookAt } from "./look.ts";
import { monoIn } from "./mono.ts";
import { type Span, spansOf } from "./pace.ts";
import { foundIn, presence } from "./presence.ts";
import { clearestOf, heardIn, resultOf } from "./result.ts";
import type { NotMeasured, ReturnMeasurement } from "./return.ts";
import { faultOfSamples } from "./samples.ts";
import { segmentTime } from "./segments.ts";

export type { NotMeasured, ReturnMeasurement } from "./return.ts";

/** So many tones of each comb must fit below 0.45 of the rate: at 16 kHz there are 57. */
const fewest = 50;
/** The tones must be so strong against the noise about them: some fifteen of a comb, in some input. */
const weakest = -15;
/** Where nothing of the combs is, they stand out by less than this; noise alone makes less than half of it. */
const leastPresent = 0.022;
/** So long a time of one stretch shows whether the tones go on evenly. */
const shortest: Seconds = 3;

/**
 * What a capture of the multitone says, or why it says nothing. The signal may begin at any time, before the capture too, as long as one stretch is there
 * from end to end; clocks may differ by 300 ppm. One input or two; of a rate from 16 to 768 kHz.
 * @throws RangeError for another number of channels, or channels that are not of one length: that is a mistake of ours
 */
export function measureReturn(capture: Capture): ReturnMeasurement | NotMeasured {
  const [first, second = first] = capture.channels;
  if (first === undefined || capture.channels.length > 2)
    throw new RangeError(`${capture.channels.length} channels: 1 or 2`);
  if (first.length !== second?.length)
    throw new RangeError(`channels of ${first.length} and ${second?.length} samples`);
  if (!(capture.rate <= 768_000 && countAt(capture.rate) >= fewest))
    return { refused: "rate", measured: capture.rate, bound: capture.rate > 16e3 ? 768e3 : 16e3 };
  return faultOfSamples(capture) ?? looked(capture);
}

function looked(capture: Capture): ReturnMeasurement | NotMeasured {
  const look = lookAt(capture);
  const present = presence(look);
  const found = foundIn(present);
  const [best] = found;
  const stands = best === undefined ? 0 : standing(present, best.start);
  if (best === undefined || stands < leastPresent)
    return { refused: "too quiet", measured: asRatio(stands), bound: weakest };
  const spans = spansOf(look, best.start).filter(({ from, to }) => (to - from) * segmentTime > 0.5);
  const clock = { start: best.start, pace: 1 };
  const fault = cutShort(capture, spans, clock) ?? monoIn(capture, clock);
  if (fault !== undefined) return fault;
  const long = spans.filter(({ from, to }) => (to - from) * segmentTime > shortest);
  const going = goingOn(look, long, capture.rate);
  if ("refused" in going) return going;
  const clocks = found.map(({ start }) => ({ start, pace: 1 / (1 - going.drift) }));
  return judged(bestOf(capture, clocks, look.count), look.count);
}

/** How far the combs stand out of their surroundings while they should sound. */
function standing(present: Float64Array, start: Seconds): number {
  const inside = [...present].filter((_, at) =>
    stretches.some(
      ({ start: from, end }) =>
        at * segmentTime > start + from && (at + 1) * segmentTime < start + end,
    ),
  );
  return inside.reduce((sum, value) => sum + value, 0) / Math.max(1, inside.length);
}

/** The ratio of tones to noise that makes combs stand out so far, decibels: noise up to 15 kHz has so many segments' bins for each tone. */
const asRatio = (stands: number): number => {
  const share = 0.5 + Math.min(0.499, Math.max(1e-4, stands));
  return 10 * Math.log10((2 * share - 1) / (1 - share) / 8);
};

function cutShort(capture: Capture, spans: readonly Span[], clock: Clock): NotMeasured | undefined {
  if (wholeIn(capture, clock).length > 0) return undefined;
  const measured = Math.max(0, ...spans.map(({ from, to }) => (to - from) * segmentTime));
  const { start, end } = stretches[0];
  return { refused: "cut short", measured, bound: end - start };
}

/** One stretch alone may be the first or the second: edges and clicks tell. */
function bestOf(capture: Capture, clocks: readonly Clock[], count: number): Aligned {
  const all = clocks.flatMap((clock) => {
    const which = wholeIn(capture, clock);
    return which.length > 0 ? [aligned(capture, clock, which, count)] : [];
  });
  return all.reduce((one, other) => (other.fit > one.fit ? other : one));
}

function judged(aligned: Aligned, count: number): ReturnMeasurement | NotMeasured {
  const heard = heardIn(aligned);
  const gap = gapBetween(heard.heard.flat());
  if (gap !== undefined) return gap;
  const result = resultOf(aligned, heard, count);
  const ratio = clearestOf(aligned);
  const carried = result.entries.flat().some((entry) => entry.carried);
  return carried && ratio > weakest
    ? result
    : { refused: "too quiet", measured: ratio, bound: weakest };
}
