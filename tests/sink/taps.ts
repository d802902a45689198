import type { Milliseconds } from "./capture.ts";
import { clock, type Recording, timeOf } from "./capture.ts";
import { type Desk, pause } from "./desk.ts";
import { leadOf, programmeOf } from "./programme.ts";

/** What one press of play, and one of silence after it, took. */
export interface Tap {
  /** From the press to the start of the source, in the page. */
  readonly inPage: Milliseconds;
  /** From the press until the first sample of what is played is out of the device; most signals begin with some silence. */
  readonly toSound: Milliseconds;
  /** From a press of silence until the last sample is out. */
  readonly toSilence: Milliseconds;
  /** Of that, what the browser says that it and the device take. */
  readonly stated: Milliseconds;
}

interface Press {
  readonly pressed: number;
  readonly started?: number;
}

/** What is played; its level does not matter. */
const [name, seed, level] = ["rotation", 1, -50] as const;
/** How long it is heard, and how long it is silent before the next; seconds. */
const [sounding, resting] = [0.6, 0.5];

/** Presses play and silence in turn with a real pointer, and listens to the device. A page loaded anew each time is pressed for the first time. */
export async function taps(desk: Desk, count: number, anew: boolean): Promise<readonly Tap[]> {
  const { page, sink } = desk;
  const made: { presses: readonly [Press, Press]; stated: number; clocks: number }[] = [];
  const recorder = await desk.listen(5);
  for (let n = 0; n < count; n += 1) {
    if (anew || n === 0) {
      await page.reload();
      await pause(1);
      await page.ask(`stage.choose("${name}", ${seed}, { loop: true })`);
    }
    await page.click("#play");
    await pause(sounding);
    await page.click("#silence");
    await pause(resting);
    const presses = await page.ask<[Press, Press]>("stage.presses.slice(-2)");
    const { base, output } = await page.ask<{ base: number; output: number }>("stage.latency()");
    made.push({ presses, stated: base + output, clocks: await clocksApart(desk) });
  }
  const recording = await recorder.stop();
  const lead = leadOf(programmeOf(name, seed, sink.rate, { level, loop: true }));
  return made.map(({ presses: [play, silence], stated, clocks }) => {
    const from = frameOf(recording, play.pressed - clocks);
    const to = frameOf(recording, silence.pressed - clocks + 1000 * resting);
    const heard = (n: number) => recording.left[n] !== 0 || recording.right[n] !== 0;
    let [first, last] = [from, to];
    while (first < to && !heard(first)) first += 1;
    while (last > from && !heard(last)) last -= 1;
    return {
      inPage: (play.started ?? Number.NaN) - play.pressed,
      toSound: timeOf(recording, first) - (1000 * lead) / recording.rate - play.pressed + clocks,
      toSilence: timeOf(recording, last) - silence.pressed + clocks,
      stated,
    };
  });
}

/** The frame that came out at a time. */
function frameOf({ chunks, rate, left }: Recording, time: number): number {
  const chunk = chunks.find(({ at }) => at >= time);
  if (chunk === undefined) return left.length - 1;
  return Math.max(0, chunk.to - Math.round(((chunk.at - time) * rate) / 1000));
}

/** By how many milliseconds the page's clock is ahead of ours, from the quickest of some questions. */
async function clocksApart({ page }: Desk): Promise<Milliseconds> {
  let best = { took: Number.POSITIVE_INFINITY, apart: 0 };
  for (let n = 0; n < 8; n += 1) {
    const asked = clock();
    const there = await page.ask<number>("stage.clock()");
    const answered = clock();
    const took = answered - asked;
    if (took < best.took) best = { took, apart: there - (asked + answered) / 2 };
  }
  return best.apart;
}
