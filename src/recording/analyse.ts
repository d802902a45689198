import { measureReturn } from "#core/measurement/measured.ts";
import type { NotMeasured, ReturnMeasurement } from "#core/measurement/return.ts";
import { createScan, type Region } from "#core/measurement/scan.ts";
import type { Seconds } from "#core/units/units.ts";
import { blocksOf, type Part, partOf, wholeOf } from "./blocks.ts";
import { carrying } from "./carrying.ts";
import { type Layout, layoutOf } from "./layout.ts";
import type { Slices } from "./slices.ts";
import type { Oddity, Trouble } from "./trouble.ts";

/** One playing of our signal in a recording. */
export interface Playing {
  /** When in the file it begins and ends. */
  readonly from: Seconds;
  readonly to: Seconds;
  /** Which channels of the file were taken for left and right, counted from 1. */
  readonly channels: readonly number[];
  readonly measured: ReturnMeasurement | NotMeasured;
}

/** What was made of a recording. */
export interface Analysed {
  readonly file: Layout;
  readonly odd: readonly Oddity[];
  /** How often the signal is in it; the first ones are measured. */
  readonly found: number;
  readonly playings: readonly Playing[];
}

export type Analysis = Analysed | Trouble;

/** So many playings are measured: a recording of a day may hold thousands. */
const mostPlayings = 20;
/** The share of the work that is looking for the signal. */
const looking = 0.9;
const rates = { least: 8000, most: 768_000 };

/**
 * Finds our multitone in a recording, measures every playing of it, and says how far it is, from 0 to 1. Goes through the file once
 * and then once more through what was found; memory does not grow with it. What is wrong with the file is a value.
 */
export async function* analyseRecording(slices: Slices): AsyncGenerator<number, Analysis, void> {
  const layout = await layoutOf(slices);
  if ("trouble" in layout) return layout;
  const { rate } = layout;
  if (rate < rates.least || rate > rates.most) return { trouble: "rate", found: { rate } };
  const scanned = yield* scan(slices, layout);
  if ("trouble" in scanned) return scanned;
  const playings: Playing[] = [];
  for (const one of scanned.found.slice(0, mostPlayings)) {
    const playing = await playingOf(slices, layout, { ...one, channels: wholeOf(layout).channels });
    if ("trouble" in playing) return playing;
    playings.push(playing);
    yield looking + (1 - looking) * (playings.length / scanned.found.length);
  }
  const odd: readonly Oddity[] = scanned.strange > 0 ? ["not numbers"] : [];
  return { file: layout, odd: [...layout.odd, ...odd], found: scanned.found.length, playings };
}

interface Scanned {
  readonly found: readonly Region[];
  readonly strange: number;
}

async function* scan(
  slices: Slices,
  layout: Layout,
): AsyncGenerator<number, Scanned | Trouble, void> {
  const whole = wholeOf(layout);
  const scanning = createScan(layout.rate, layout.channels);
  const blocks = blocksOf(slices, layout, whole);
  let strange = 0;
  for (;;) {
    const { done, value } = await blocks.next();
    if (done) return value ?? { found: scanning.found(), strange };
    scanning.push(value.channels);
    strange += value.strange;
    yield looking * ((value.from + (value.channels[0]?.length ?? 0)) / layout.frames);
  }
}

async function playingOf(slices: Slices, layout: Layout, part: Part): Promise<Playing | Trouble> {
  const channels = await carrying(slices, layout, part);
  if ("trouble" in channels) return channels;
  const samples = await partOf(slices, layout, { ...part, channels });
  if ("trouble" in samples) return samples;
  const { rate } = layout;
  return {
    from: part.from / rate,
    to: part.to / rate,
    channels: channels.map((at) => at + 1),
    measured: measureReturn({ channels: samples, rate }),
  };
}
