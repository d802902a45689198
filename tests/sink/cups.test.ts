import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { cupsTold } from "#core/measurement/cups-told.ts";
import { preferStarted } from "#tests/support/preferred.ts";
import { onPath } from "#tests/support/programs.ts";
import { type Pulse, startPulse } from "#tests/support/pulse.ts";
import { allMeasured, type Lane, type Measured } from "./lanes.ts";
import { chromiumWith } from "./listeners.ts";
import { type Served, servePlayer } from "./player-page.ts";
import type { Wire } from "./wire.ts";

/** Whether there can be devices and wires; CI always has them. */
const here =
  (onPath("pulseaudio") !== undefined && onPath("sox") !== undefined) ||
  process.env.CI !== undefined;
if (!here) console.log("Cups at a microphone are left out: pulseaudio or sox is not installed");

const rate = 48_000;
/** A room: tones go out at −50 dBFS, and a cup gives some of that. */
const noise = -78;
/** What a driver and a microphone do besides, each cup a little otherwise. */
const driver = (peak: number) => `highpass 90 equalizer ${peak} 1q +5`;

const cups: Readonly<Record<string, Wire>> = {
  left: { effects: `remix 1 1 ${driver(900)}`, noise },
  "right, upside down and softer": { effects: `remix 2v-0.5 2v-0.5 ${driver(1000)}`, noise },
  right: { effects: `remix 2 2 ${driver(1100)}`, noise },
  dead: { effects: "remix 0 0", noise },
};

describe.runIf(here)("cups at a microphone that has one channel", () => {
  let served: Served;
  let pulse: Pulse;
  let browser: Awaited<ReturnType<typeof chromiumWith>>;
  let all: ReadonlyMap<string, Measured>;
  beforeAll(async () => {
    served = await servePlayer();
    const numbers = [1, 2];
    const sinks = numbers.flatMap((n) =>
      ["desk", "far"].map((name) => ({ name: `${name}${n}`, rate, channels: 2 })),
    );
    const sources = numbers.map((n) => ({ name: `microphone${n}`, of: `far${n}`, channels: 1 }));
    pulse = await startPulse({ sinks, sources });
    browser = await chromiumWith(pulse, true);
    const lanes: readonly Lane[] = await Promise.all(
      numbers.map(async (n) => {
        const page = await browser.open(served.measuring);
        await page.ask(`stage.use("desk${n}", "microphone${n}")`);
        return { page, desk: `desk${n}`, far: `far${n}` };
      }),
    );
    preferStarted();
    all = await allMeasured(pulse, lanes, cups);
  }, 200_000);
  afterAll(async () => {
    await browser?.close();
    await pulse?.stop();
    await served?.close();
  });

  const beside = (right: string, left = "left") => {
    const [one, other] = [left, right].map((name) => {
      const { result, level } = all.get(name) as Measured;
      if ("refused" in result && result.refused === "lost") throw new Error(`${name} was lost`);
      return { heard: result, level };
    });
    if (!one || !other) throw new Error("there are two cups");
    const told = cupsTold(one, other);
    if ("refused" in told) throw new Error(JSON.stringify(told));
    return told;
  };

  test("one softer and upside down", () => {
    const { cups, apart, polarity, buzzing } = beside("right, upside down and softer");
    expect(cups.map(({ carries }) => carries)).toEqual(["left", "right"]);
    expect(apart).toBeCloseTo(-6, 0);
    expect(polarity).toBe(-1);
    expect(buzzing).toBeUndefined();
  });

  test("both alike", () => {
    const { apart, polarity } = beside("right");
    expect(apart).toBeCloseTo(0, 0);
    expect(polarity).toBe(1);
  });

  test("one dead", () => {
    const { cups, apart } = beside("right", "dead");
    expect(cups.map(({ carries }) => carries)).toEqual(["neither", "right"]);
    expect(apart).toBeUndefined();
  });
});
