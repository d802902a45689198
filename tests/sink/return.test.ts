import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { onPath } from "#tests/support/programs.ts";
import { type Pulse, startPulse } from "#tests/support/pulse.ts";
import { capture } from "./capture.ts";
import { pause } from "./desk.ts";
import { chromiumWith, type OpenPage } from "./listeners.ts";
import { captureOf, type Packed } from "./packed.ts";
import { type Served, servePlayer } from "./player-page.ts";
import { likeness } from "./same.ts";
import { startWire } from "./wire.ts";

/** Whether there can be devices and wires; CI always has them. */
const here =
  (onPath("pulseaudio") !== undefined && onPath("sox") !== undefined) ||
  process.env.CI !== undefined;
if (!here) console.log("Measuring through a wire is left out: pulseaudio or sox is not installed");

const numbers = [1, 2, 3, 4];
const rate = 48_000;

describe.runIf(here)("a wire from an output to an input", () => {
  let served: Served;
  let pulse: Pulse;
  let browser: Awaited<ReturnType<typeof chromiumWith>>;
  let pages: readonly OpenPage[];
  beforeAll(async () => {
    served = await servePlayer();
    const sinks = numbers.flatMap((n) =>
      ["desk", "far"].map((name) => ({ name: `${name}${n}`, rate, channels: 2 })),
    );
    const sources = numbers.map((n) => ({ name: `return${n}`, of: `far${n}`, channels: 2 }));
    pulse = await startPulse({ sinks, sources });
    browser = await chromiumWith(pulse, true);
    pages = await Promise.all(numbers.map(() => browser.open(served.measuring)));
    await Promise.all(
      pages.map((page, n) => page.ask(`stage.use("desk${n + 1}", "return${n + 1}")`)),
    );
  }, 60_000);
  afterAll(async () => {
    await browser?.close();
    await pulse?.stop();
    await served?.close();
  });

  test("what is captured is what came, sample for sample", { timeout: 40_000 }, async () => {
    const [page] = pages;
    if (page === undefined) throw new Error("there is no page");
    const wire = startWire(pulse, "desk1", "far1", { effects: "remix 2 1" });
    await pause(1.5);
    const recorder = await capture(pulse, { name: "far1", rate, channels: 2 }, 50);
    await page.click("#measure");
    const packed = await page.ask<Packed>("stage.packed()");
    await pause(0.2);
    const recording = await recorder.stop();
    await wire.stop();
    expect(packed).toMatchObject({ ended: "measured" });
    const captured = captureOf(packed);
    const { frames, wrong, worst } = likeness(captured, recording);
    console.log(`${frames} frames, worst ${worst.toFixed(3)} of a 16-bit step, ${wrong} wrong`);
    expect(wrong).toBe(0);
    expect(frames).toBeGreaterThan(10.8 * rate);
    expect(packed).toMatchObject({ gaps: { missing: 0, blank: 0 }, level: -50 });
  });
});
