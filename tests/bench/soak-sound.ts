import { signalNames } from "#core/signals/catalogue.ts";
import { type Desk, openDesk, pause } from "#tests/sink/desk.ts";
import { heldBy } from "#tests/sink/heap.ts";
import { inChromium } from "#tests/sink/listeners.ts";
import { servePlayer } from "#tests/sink/player-page.ts";
import { shares, usedBy } from "#tests/sink/processor.ts";

/**
 * `npm run soak -- sound [minutes] [signal]`: plays over and over in Chromium to a device of PulseAudio, at the highest level, and
 * compares every sample that came out with what was rendered. Ends with 1 when one is wrong.
 */
const [given = "10", wanted = "rotation"] = process.argv.slice(3);
const minutes = Number(given);
/** What is started for a measurement ends by itself after a quarter of an hour. */
if (!(minutes > 0 && minutes <= 13)) throw new RangeError(`${given} minutes: up to 13`);
const name = signalNames.find((one) => one === wanted);
if (name === undefined) throw new RangeError(`${wanted}: one of ${signalNames.join(", ")}`);

const percent = (part: number): string => `${(100 * part).toFixed(2)} %`;

/** A line a minute; in the end, by how many bytes more is held than at first. */
async function watch({ page, pulse }: Desk): Promise<void> {
  const { pid = Number.NaN } = page;
  await pause(1);
  const held = (await heldBy(page)) ?? Number.NaN;
  const first = pulse.underruns();
  for (let left = minutes; left > 0; left -= 1) {
    const seconds = 60 * Math.min(1, left);
    const from = await usedBy(pid);
    await pause(seconds);
    const used = shares(from, await usedBy(pid), seconds);
    console.log(
      `page ${percent(used.page)}, sound service ${percent(used.audio)}, whole browser ${percent(used.whole)} of a core; ${pulse.underruns() - first} underruns so far`,
    );
  }
  console.log(`${((await heldBy(page)) ?? Number.NaN) - held} bytes more held`);
}

const served = await servePlayer();
const desk = await openDesk(inChromium, served);
try {
  await desk.play({ name: "left-ident", seed: 1, level: -50 });
  await desk.louder(10);
  const loop = 60 * minutes;
  const heard = await desk.play({ name, seed: 1, loop, level: -20 }, () => watch(desk));
  const { frames, worst, slips, underruns, fade, stray, recording } = heard;
  console.log(
    `${name}: ${frames} frames of two channels compared (${(frames / recording.rate).toFixed(1)} s), worst ${worst.toFixed(4)} of a 16-bit step; ${slips.length} slips, ${underruns} underruns; fade ${((1000 * fade) / recording.rate).toFixed(1)} ms; ${stray} stray samples`,
  );
  for (const { at, by, wrong } of slips)
    console.log(
      `at ${(at / recording.rate).toFixed(3)} s ${wrong} frames are wrong, ${by} late after`,
    );
  if (slips.length > 0 || stray > 0 || worst > 0.5) process.exitCode = 1;
} finally {
  await desk.close();
  await served.close();
}
