import { OfflineAudioContext } from "standardized-audio-context";
import { server } from "vitest/browser";
import type { Hertz } from "#core/units/units.ts";

interface Heard {
  readonly left: Float32Array;
  readonly right: Float32Array;
}

/** Puts something into a context and starts it. */
type Play = (context: OfflineAudioContext) => void;

/** What arrives at an output at this rate within so many samples, of what `play` puts into the context and starts. */
export async function rendered(length: number, rate: Hertz, play: Play): Promise<Heard> {
  const [left = new Float32Array(), right = new Float32Array()] = await channelsOf(
    { numberOfChannels: 2, length, sampleRate: rate },
    play,
  );
  return { left, right };
}

interface Options {
  readonly numberOfChannels: number;
  readonly length: number;
  readonly sampleRate: Hertz;
}

/** The same of an output with so many channels: each of them. */
export async function channelsOf(options: Options, play: Play): Promise<Float32Array[]> {
  const once = async () => {
    const context = new OfflineAudioContext(options);
    play(context);
    const buffer = await context.startRendering();
    return Array.from({ length: options.numberOfChannels }, (_, n) => buffer.getChannelData(n));
  };
  // WebKitGTK 2.50.6: now and then a node renders blocks of zeros while memory is cleaned up; of the whole graph, rendered for
  // 16 s, once in a hundred times, and too seldom for a test that it is still so. A context that plays did not in 30 s.
  return server.browser === "webkit" ? twiceAlike(once) : once();
}

async function twiceAlike(once: () => Promise<Float32Array[]>): Promise<Float32Array[]> {
  let before = await once();
  for (let times = 0; times < 4; times += 1) {
    const now = await once();
    const last = before;
    if (now.every((channel, n) => same(channel, last[n] ?? channel))) return now;
    before = now;
  }
  throw new Error("no two renderings are alike");
}

const same = (one: Float32Array, other: Float32Array) =>
  one.every((x, n) => Object.is(x, other[n]));
