import { describe, expect, test } from "vitest";
import type { Version } from "#core/hearing/audition.ts";
import { pause, Stage, settled, soon } from "./stage.ts";
import { type Heard, isGapless, peakOf, soundingSpan } from "./tap.ts";
import { quiet, steepest, twoTones } from "./two-tones.ts";

const stage = new Stage();
const tones = twoTones(0.4, 48_000);

/** Greatest step of the left from one sample to the next. */
const steepestStep = (heard: Heard[]) =>
  heard.reduce(
    (most, { left }, n) => Math.max(most, Math.abs(left - (heard[n - 1]?.left ?? left))),
    0,
  );

/** Begins a loop, does something while it plays, silences it; all that was heard, and when silence was pressed. */
async function looped(during: () => Promise<unknown>) {
  const { player, tap } = stage;
  tap.heard.length = 0;
  const ending = player.audition(tones, { loop: true });
  const context = await stage.sounding();
  await during();
  const pressed = context.currentTime;
  player.silence();
  expect(await ending).toEqual({ ended: "silenced" });
  await settled();
  return { heard: [...tap.heard], pressed, outputRate: context.sampleRate };
}

/**
 * On a busy machine the recorder may lose a block, or hand over one that is being written again: then the right of it is no
 * longer the left upside down, as it is in both tones. Neither says anything of the player.
 */
async function loopedOnTheRecord(during: () => Promise<unknown>) {
  for (let again = 0; again < 8; again++) {
    const recorded = await looped(during);
    const { heard, pressed } = recorded;
    const toTheEnd = (heard.at(-1)?.at ?? 0) > pressed + 0.05;
    const whole = heard.every(({ left, right }) => Math.abs(left + right) < 1e-6);
    if (toTheEnd && whole && isGapless(heard)) return recorded;
  }
  throw new Error("no loop was recorded whole");
}

/** To and fro, and every fifth time back at once. */
const presses = Array.from(
  { length: 40 },
  (_, press): Version => (press % 2 === 0 && press % 5 !== 0 ? "faulty" : "healthy"),
);

describe("switching", () => {
  test("at any moment never steps more than a ramp allows, nor is louder than the louder", async () => {
    const { heard, outputRate } = await loopedOnTheRecord(async () => {
      for (const [press, version] of presses.entries()) {
        await pause(3 + ((press * 37) % 41));
        stage.player.hear(version);
      }
    });
    expect(peakOf(heard)).toBeLessThan(0.1 * quiet * 1.001);
    // What the tone does by itself, and what 20 ms from one to the other add.
    const bound = 0.1 * steepest(outputRate) + 0.15 / (0.02 * outputRate);
    expect(steepestStep(heard)).toBeLessThan(quiet * bound * 1.05);
  });

  test("is done soon: the other version is heard alone", async () => {
    let pressed = 0;
    const { heard } = await loopedOnTheRecord(async () => {
      await pause(200);
      pressed = stage.tap.contexts.at(-1)?.currentTime ?? 0;
      stage.player.hear("faulty");
      await pause(200);
    });
    const peakOfTone = (from: number, to: number) =>
      peakOf(heard.filter(({ at }) => at > from && at < to)) / quiet;
    expect(peakOfTone(pressed - 0.05, pressed)).toBeGreaterThan(0.09);
    expect(peakOfTone(pressed + 0.08, pressed + 0.15)).toBeLessThan(0.0501);
  });
});

describe("a loop", () => {
  test("goes on until it is silenced, without a click at the joint", async () => {
    const { heard, pressed, outputRate } = await loopedOnTheRecord(() => pause(1300));
    const { first } = soundingSpan(heard) ?? { first: pressed };
    expect(pressed - first).toBeGreaterThan(3 * 0.4);
    const playing = heard.filter(({ at }) => at < pressed);
    expect(steepestStep(playing)).toBeLessThan(quiet * 0.1 * steepest(outputRate) * 1.01);
  });

  test("follows louder and softer", async () => {
    const { heard } = await loopedOnTheRecord(async () => {
      await pause(100);
      stage.press("louder", 1);
      await pause(600);
      stage.press("softer", 1);
      await pause(300);
    });
    expect(peakOf(heard)).toBeCloseTo(0.1 * quiet * 10 ** (3 / 20), 4);
  });

  test.for([150, 157, 163])("is silent within 20 ms, pressed after %d ms", async (ms) => {
    const { heard, pressed } = await loopedOnTheRecord(() => pause(ms));
    const { last } = soundingSpan(heard) ?? { last: 0 };
    expect(last - pressed).toBeLessThan(soon);
    expect(last).toBeGreaterThan(pressed - 0.01);
  });

  test("is silent within 20 ms in the midst of going over to the other version", async () => {
    const { heard, pressed } = await loopedOnTheRecord(async () => {
      await pause(150);
      stage.player.hear("faulty");
      await pause(12);
    });
    const { last } = soundingSpan(heard) ?? { last: 0 };
    expect(last - pressed).toBeLessThan(soon);
  });
});
