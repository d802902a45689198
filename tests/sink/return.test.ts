import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { gainFor } from "#audio/course.ts";
import type { ReturnMeasurement } from "#core/measurement/return.ts";
import { everyOther } from "#tests/support/long.ts";
import { preferStarted } from "#tests/support/preferred.ts";
import { onPath } from "#tests/support/programs.ts";
import { type Pulse, startPulse } from "#tests/support/pulse.ts";
import { capture } from "./capture.ts";
import { pause } from "./desk.ts";
import { type FaultyWire, faultyWires } from "./faults.ts";
import { allMeasured, type Lane, type Measured } from "./lanes.ts";
import { chromiumWith } from "./listeners.ts";
import { captureOf, type Packed } from "./packed.ts";
import { type Served, servePlayer } from "./player-page.ts";
import { likeness } from "./same.ts";
import { verdictOf } from "./verdict.ts";
import { startWire } from "./wire.ts";

/** Whether there can be devices and wires; CI always has them. */
const here =
  (onPath("pulseaudio") !== undefined && onPath("sox") !== undefined) ||
  process.env.CI !== undefined;
if (!here) console.log("Measuring through a wire is left out: pulseaudio or sox is not installed");

/** The good wire, and every other that has a fault; in the long form all. */
const wires = Object.fromEntries(everyOther(Object.entries(faultyWires), 3));

/** So many at once keep time on two cores. */
const numbers = [1, 2, 3, 4];
const rate = 48_000;

describe.runIf(here)("a wire from an output to an input", () => {
  let served: Served;
  let pulse: Pulse;
  let browser: Awaited<ReturnType<typeof chromiumWith>>;
  let lanes: readonly Lane[];
  beforeAll(async () => {
    served = await servePlayer();
    const sinks = numbers.flatMap((n) =>
      ["desk", "far"].map((name) => ({ name: `${name}${n}`, rate, channels: 2 })),
    );
    const sources = numbers.map((n) => ({ name: `return${n}`, of: `far${n}`, channels: 2 }));
    pulse = await startPulse({ sinks, sources });
    browser = await chromiumWith(pulse, true);
    lanes = await Promise.all(
      numbers.map(async (n) => {
        const page = await browser.open(served.measuring);
        await page.ask(`stage.use("desk${n}", "return${n}")`);
        return { page, desk: `desk${n}`, far: `far${n}` };
      }),
    );
    preferStarted();
  }, 60_000);
  afterAll(async () => {
    await browser?.close();
    await pulse?.stop();
    await served?.close();
  });

  test("what is captured is what came, sample for sample", { timeout: 40_000 }, async () => {
    const [{ page, desk, far } = lanes[0] as Lane] = lanes;
    const wire = startWire(pulse, desk, far, { effects: "remix 2 1" });
    await pause(1.5);
    const recorder = await capture(pulse, { name: far, rate, channels: 2 }, 50);
    await page.click("#measure");
    const packed = await page.ask<Packed>("stage.packed()");
    await pause(0.2);
    const recording = await recorder.stop();
    await wire.stop();
    expect(packed).toMatchObject({ ended: "measured", level: -50 });
    const { frames, wrong, worst } = likeness(captureOf(packed), recording);
    console.log(`${frames} frames, worst ${worst.toFixed(3)} of a 16-bit step, ${wrong} wrong`);
    expect(wrong).toBe(0);
    expect(frames).toBeGreaterThan(10.8 * rate);
    // Silence that a late wire put in is there too: it came.
    expect(packed).toMatchObject({ gaps: { missing: 0 } });
  });

  describe("with a fault in it", () => {
    let all: ReadonlyMap<string, Measured>;
    beforeAll(async () => {
      all = await allMeasured(pulse, lanes, wires);
    }, 240_000);

    test.for(Object.entries(wires))("%s", ([name, wire]) => {
      const { level, result, before } = all.get(name) as Measured;
      if (before.length > 0) console.log(`${name}: again after ${before.join(", ")}`);
      expect(level).toBe(-50);
      if ("refused" in result) throw new Error(JSON.stringify(result));
      console.log(`${name}: ${said(result)}`);
      expectMatrix(result, wire, gainFor(level));
      expectRest(result, wire);
      const known = all.get("healthy") as Measured;
      if ("refused" in known.result) throw new Error(JSON.stringify(known.result));
      const healthy = { measured: known.result, level: known.level };
      const verdict = verdictOf(wire.lead ?? "TRS lead", { measured: result, level }, healthy);
      console.log(`${name}: ${verdict.join("; ")}`);
      expect(verdict).toContain(wire.verdict);
    });
  });
});

const said = ({ drift, delay, inputs }: ReturnMeasurement): string =>
  `drift ${drift.value.toFixed(2)} ppm, delay ${(1000 * delay.value).toFixed(1)} ms, ${inputs.map(({ signalToNoise }) => `${signalToNoise.toFixed(1)} dB`).join(" and ")} to noise`;

/** No size is off by more than a hundredth of the whole, or six times its own error at any one tone; all polarities are right. */
function expectMatrix({ responses, entries }: ReturnMeasurement, wire: FaultyWire, sent: number) {
  for (const [input, programme] of pairs) {
    const gain = wire.matrix[input]?.[programme] ?? 0;
    const off = responses.map(({ frequency, gains }) => {
      const found = gains[input]?.[programme];
      if (found === undefined) return 0;
      const due = Math.abs(gain) * (wire.size?.(frequency) ?? 1);
      const size = Math.hypot(found.re, found.im) / sent;
      return Math.abs(size - due) / Math.max(0.01, (6 * found.error) / sent);
    });
    expect(Math.max(...off), `input ${input} of programme ${programme}`).toBeLessThan(1);
    const entry = entries[input]?.[programme];
    expect(entry?.carried).toBe(gain !== 0);
    expect(entry?.polarity).toBe(gain === 0 ? undefined : Math.sign(gain));
  }
}

const pairs = [0, 1].flatMap((input) => [0, 1].map((programme) => [input, programme] as const));

function expectRest({ drift, delay, inputs }: ReturnMeasurement, wire: FaultyWire) {
  expect(Math.abs(drift.value - (wire.drift ?? 0))).toBeLessThan(2);
  if (wire.late) expect(delay.value).toBeGreaterThan(wire.late);
  for (const { hum, signalToNoise } of inputs) {
    if (wire.hum) expect(Math.abs((hum?.levels[0] ?? 0) - wire.hum)).toBeLessThan(0.5);
    if (wire.ratio) expect(Math.abs(signalToNoise - wire.ratio)).toBeLessThan(1);
  }
}
