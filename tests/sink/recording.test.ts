import { execFileSync } from "node:child_process";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { preferStarted } from "#tests/support/preferred.ts";
import { onPath } from "#tests/support/programs.ts";
import { type Pulse, startPulse } from "#tests/support/pulse.ts";
import { pause } from "./desk.ts";
import { chromiumWith, type OpenPage } from "./listeners.ts";
import { captureOf, type Packed } from "./packed.ts";
import { type Served, servePlayer } from "./player-page.ts";
import { startWire } from "./wire.ts";

/** Whether there can be devices; CI always has them. */
const asking = onPath("pactl");
const here =
  (onPath("pulseaudio") !== undefined && onPath("sox") !== undefined && asking !== undefined) ||
  process.env.CI !== undefined;
if (!here) console.log("Recording from a device is left out: pulseaudio or sox is not installed");

const rate = 48_000;
const sinks = ["desk", "far"].map((name) => ({ name, rate, channels: 2 }));
const sources = [
  { name: "return", of: "far", channels: 2 },
  { name: "single", of: "far", channels: 1 },
];

describe.runIf(here)("the built page, under its policy", () => {
  let served: Served;
  let pulse: Pulse;
  let page: OpenPage;
  const closing: (() => Promise<void>)[] = [];
  beforeAll(async () => {
    served = await servePlayer();
    pulse = await startPulse({ sinks, sources });
    const browser = await chromiumWith(pulse, true);
    closing.push(browser.close);
    page = await browser.open(served.measuring);
    preferStarted();
  }, 60_000);
  afterAll(async () => {
    for (const close of closing) await close();
    await pulse?.stop();
    await served?.close();
  });

  /** Records for some seconds through a wire that has noise of its own on each side. */
  async function recorded(seconds: number): Promise<Packed> {
    const wire = startWire(pulse, "desk", "far", { effects: "remix 1 2", noise: -60 });
    await pause(1);
    await page.click("#record");
    await pause(seconds);
    await page.click("#silence");
    const packed = await page.ask<Packed>("stage.packed()");
    await wire.stop();
    expect(packed).toMatchObject({ recorded: "stopped", granted: { processed: [], unsaid: [] } });
    return packed;
  }

  const levels = (packed: Packed) =>
    captureOf(packed).channels.map((samples) => {
      const end = samples.subarray(samples.length >> 1);
      return 10 * Math.log10(end.reduce((sum, x) => sum + x * x, 0) / end.length);
    });

  test("records both sides of an input", { timeout: 20_000 }, async () => {
    await page.ask(`stage.use("desk", "return")`);
    const packed = await recorded(2);
    expect(levels(packed)).toHaveLength(2);
    for (const level of levels(packed)) expect(Math.abs(level + 60)).toBeLessThan(0.5);
  });

  test("hands over one channel of an input that has one", { timeout: 20_000 }, async () => {
    await page.ask(`stage.use("desk", "single")`);
    const packed = await recorded(2);
    // The browser says two.
    expect(packed).toMatchObject({ granted: { channels: 2 } });
    expect(levels(packed)).toHaveLength(1);
  });

  test("finds the level at which the return stands clear", { timeout: 30_000 }, async () => {
    await page.ask(`stage.use("desk", "return")`);
    // Two decibels are lost on the way: 41.5 dB above the softer noise at -38 dBFS, and 38 above the other at the most.
    for (const [noise, level, found] of [
      [-81.5, -38, "loud enough"],
      [-60, -20, "as loud as it may be"],
    ] as const) {
      const wire = startWire(pulse, "desk", "far", { effects: "remix 1v0.8 2v0.8", noise });
      await pause(1.5);
      await page.ask(`stage.measurer.use(stage.measurer.world().route)`);
      await page.click("#find");
      expect(await page.ask("stage.packed()")).toMatchObject({ ended: "found", found, level });
      await wire.stop();
    }
  });

  test("records by the audio thread, whose file the policy lets in", {
    timeout: 20_000,
  }, async () => {
    expect(await page.ask(policyOf)).toMatch(/script-src 'self';/);
    expect(await page.ask(fromBlob)).toBe("AbortError");
    await page.ask("void delete globalThis.MediaStreamTrackProcessor");
    const packed = await recorded(2);
    expect(packed).toMatchObject({ granted: { rate } });
    for (const level of levels(packed)) expect(Math.abs(level + 60)).toBeLessThan(2);
  });

  test("an input that vanishes ends it", { timeout: 30_000 }, async () => {
    await page.click("#record");
    await expect.poll(() => page.ask("stage.recorder.world().doing")).toBe("recording");
    ask("unload-module", moduleOf("return"));
    await expect
      .poll(() => page.ask("stage.recorder.world().trouble"), { timeout: 15_000 })
      .toMatch(/gone|lost|muted/);
    expect(await page.ask("stage.recorder.world().doing")).toBe("nothing");
    // Nor is another one taken for it.
    await page.click("#record");
    expect(await page.ask("stage.packed()")).toMatchObject({ recorded: "trouble", why: "gone" });
  });

  test("where nobody allows it nothing is recorded", { timeout: 30_000 }, async () => {
    const browser = await chromiumWith(pulse, false);
    closing.unshift(browser.close);
    const other = await browser.open(served.measuring);
    await other.click("#record");
    expect(await other.ask("stage.packed()")).toMatchObject({ why: "not allowed" });
    expect(await other.ask("stage.recorder.named()")).toBe("not allowed");
  });

  /** What the sound server answers. */
  const ask = (...question: string[]): string =>
    execFileSync(asking ?? "", question, { env: pulse.env, encoding: "utf8" });

  /** The number of the module that is an input. */
  const moduleOf = (source: string): string =>
    ask("list", "short", "modules")
      .split("\n")
      .find((one) => one.includes(`source_name=${source} `))
      ?.split("\t")[0] ?? "";
});

const policyOf = `document.querySelector("meta[http-equiv]").content`;
/** What becomes of a worklet from a blob address. */
const fromBlob = `new AudioContext().audioWorklet.addModule(URL.createObjectURL(new Blob(["0"], { type: "text/javascript" }))).then(() => "loaded", ({ name }) => name)`;
