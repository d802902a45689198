import type { Layout } from "./layout.ts";
import { takeChannel } from "./samples.ts";
import { type Slices, viewOf } from "./slices.ts";
import { type Trouble, troubled } from "./trouble.ts";

/** Samples of a file, one array a channel, all of one length; full scale is 1. */
export interface Block {
  /** Where in the file: samples a channel. */
  readonly from: number;
  readonly channels: readonly Float32Array[];
  /** So many samples are no finite numbers: they are 0 here. */
  readonly strange: number;
}

/** What is read from a file: from one sample up to another, and which channels, counted from 0. */
export interface Part {
  readonly from: number;
  readonly to: number;
  readonly channels: readonly number[];
}

/** Bytes of the file that are in memory at a time. */
const sliceBytes = 2 ** 20;

/** All of a file. */
export const wholeOf = ({ frames, channels }: Layout): Part => ({
  from: 0,
  to: frames,
  channels: Array.from({ length: channels }, (_, at) => at),
});

/** The samples of a part, block after block, in memory that does not grow with it. Tells where reading ended before its end. */
export async function* blocksOf(
  slices: Slices,
  { from: data, frame, coding }: Layout,
  part: Part,
): AsyncGenerator<Block, Trouble | undefined, void> {
  const most = Math.floor(sliceBytes / frame);
  for (let from = part.from; from < part.to; from += most) {
    const frames = Math.min(most, part.to - from);
    const view = await viewOf(slices, data + from * frame, frames * frame);
    if (view === undefined || view.byteLength < frames * frame) return troubled("cannot be read");
    let strange = 0;
    const channels = part.channels.map((channel) => {
      const samples = new Float32Array(frames);
      strange += takeChannel(view, coding, channel, frame, samples);
      return samples;
    });
    yield { from, channels, strange };
  }
  return undefined;
}

/** A part in one piece. Whoever asks says how long it may be: memory goes with it. */
export async function partOf(
  slices: Slices,
  layout: Layout,
  part: Part,
): Promise<readonly Float32Array[] | Trouble> {
  const whole = part.channels.map(() => new Float32Array(part.to - part.from));
  const blocks = blocksOf(slices, layout, part);
  for (;;) {
    const { done, value } = await blocks.next();
    if (done) return value ?? whole;
    for (const [at, channel] of value.channels.entries())
      whole[at]?.set(channel, value.from - part.from);
  }
}
