import type { SignalName } from "#core/signals/catalogue.ts";
import type { DecibelsFullScale, Seconds } from "#core/units/units.ts";
import { type Pulse, type Sink, startPulse } from "#tests/support/pulse.ts";
import { type Capture, capture, type Recording } from "./capture.ts";
import { type Comparison, compare } from "./compare.ts";
import type { OpenIn, OpenPage } from "./listeners.ts";
import type { Served } from "./player-page.ts";
import { programmeOf } from "./programme.ts";

/** What is played, as `Player.play` takes it, and at which level it is expected. */
interface Playing {
  readonly name: SignalName;
  readonly seed: number;
  /** Over and over for so long, then silenced; left out, it is played once. */
  readonly loop?: Seconds;
  readonly level: DecibelsFullScale;
}

/** How what came out of the device compares with what was played. */
export interface Heard extends Comparison {
  /** How often the sound server had nothing to play in time, from the press until after the end. */
  readonly underruns: number;
  readonly recording: Recording;
}

/** The player's page in a browser, whose device is listened to. */
export interface Desk {
  readonly pulse: Pulse;
  readonly page: OpenPage;
  readonly sink: Sink;
  readonly listen: (latency?: number) => Promise<Capture>;
  /** Plays, with something to be done while it lasts, and compares every sample. */
  readonly play: (playing: Playing, meanwhile?: () => Promise<void>) => Promise<Heard>;
  /** So many steps up, until they are reached; only after a first sound. */
  readonly louder: (steps: number) => Promise<void>;
  readonly close: () => Promise<void>;
}

export const pause = (seconds: Seconds) =>
  new Promise<void>((resolve) => setTimeout(resolve, 1000 * seconds));

/** A sound server with one output, and a browser at the served page that plays to it. */
export async function openDesk(open: OpenIn, served: Served, given: Partial<Sink> = {}) {
  const sink = { name: "desk", rate: 48_000, channels: 2, ...given };
  const pulse = await startPulse({ sinks: [sink] });
  const page = await open(served.url, pulse).catch(async (error) => {
    await pulse.stop();
    throw error;
  });
  const listen = (latency = 50) => capture(pulse, sink, latency);
  const desk: Desk = {
    pulse,
    page,
    sink,
    listen,
    play: (playing, meanwhile) => played(desk, playing, meanwhile),
    louder: (steps) => louder(page, steps),
    close: () => page.close().finally(pulse.stop),
  };
  return desk;
}

/** Recorded before the press, so that silence is seen to come first, and so long after the end that it is seen to last. */
const [before, after] = [0.2, 0.4];

async function played(
  desk: Desk,
  playing: Playing,
  meanwhile?: () => Promise<void>,
): Promise<Heard> {
  const { name, seed, loop, level } = playing;
  const { page, pulse, sink } = desk;
  await page.ask(`stage.choose("${name}", ${seed}, { loop: ${loop !== undefined} })`);
  const recorder = await desk.listen();
  await pause(before);
  const underruns = pulse.underruns();
  await page.click("#play");
  const lasting = loop === undefined ? page.ask("stage.ended()") : pause(loop);
  await Promise.all([lasting, meanwhile?.()]);
  if (loop !== undefined) await page.click("#silence");
  await pause(after);
  const late = pulse.underruns() - underruns;
  const recording = await recorder.stop();
  const programme = programmeOf(name, seed, sink.rate, { level, loop: loop !== undefined });
  return { ...compare(recording, programme), underruns: late, recording };
}

/** Seconds that a step takes, and a little more. */
const aStep = 0.27;

async function louder(page: OpenPage, steps: number): Promise<void> {
  for (let n = 0; n < steps; n += 1) await page.click("#louder");
  await pause(steps * aStep);
}
