import { execFileSync } from "node:child_process";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import type { Device, Route } from "#audio/route.ts";
import { onPath } from "#tests/support/programs.ts";
import { type Pulse, startPulse } from "#tests/support/pulse.ts";
import { capture, type Recording } from "./capture.ts";
import { compare } from "./compare.ts";
import { pause } from "./desk.ts";
import { inChromiumThatNames, type OpenPage } from "./listeners.ts";
import { type Served, servePlayer } from "./player-page.ts";
import { programmeOf } from "./programme.ts";

/** Whether there can be devices; CI always has them. */
const asking = onPath("pactl");
const here =
  (onPath("pulseaudio") !== undefined && asking !== undefined) || process.env.CI !== undefined;
if (!here) console.log("Choosing a device is left out: pulseaudio is not installed");

const sinks = ["desk", "far"].map((name) => ({ name, rate: 48_000, channels: 2 }));

const peakOf = ({ left, right }: Recording): number =>
  left.reduce((most, x, n) => Math.max(most, Math.abs(x), Math.abs(right[n] ?? 0)), 0);

describe.runIf(here)("two devices", () => {
  let served: Served;
  let pulse: Pulse;
  let page: OpenPage;
  beforeAll(async () => {
    served = await servePlayer();
    pulse = await startPulse({ sinks });
    page = await inChromiumThatNames(served.url, pulse);
  });
  afterAll(async () => {
    await page?.close();
    await pulse?.stop();
    await served?.close();
  });

  const use = (route: Route) => page.ask(`stage.player.use(${JSON.stringify(route)})`);
  const world = <T>(part: string) => page.ask<T>(`stage.player.world().${part}`);
  const named = async (name: string): Promise<Device> => {
    const devices = await page.ask<readonly Device[]>("stage.outputs.known()");
    const found = devices.find((one) => one.name.includes(name));
    if (found === undefined) throw new Error(`no ${name} among ${JSON.stringify(devices)}`);
    return found;
  };

  /** What both devices play of one ident. */
  async function heardAtBoth(): Promise<Readonly<Record<string, Recording>>> {
    await page.ask(`stage.choose("left-ident", 1, {})`);
    const recorders = await Promise.all(sinks.map((sink) => capture(pulse, sink, 50)));
    await pause(0.2);
    await page.click("#play");
    await page.ask("stage.ended()");
    await pause(0.4);
    const [desk, far] = await Promise.all(recorders.map((one) => one.stop()));
    if (desk === undefined || far === undefined) throw new Error("a recorder is missing");
    return { desk, far };
  }

  test.for(["far", "desk"])("the one that is chosen plays, %s, and no other", async (name) => {
    const device = await named(name);
    expect(await page.ask<boolean>("stage.outputs.canChoose()")).toBe(true);
    await use({ device, first: 0 });
    const heard = await heardAtBoth();
    const other = name === "far" ? "desk" : "far";
    expect(peakOf(heard[other] as Recording)).toBe(0);
    const programme = programmeOf("left-ident", 1, 48_000, { level: -50, loop: false });
    expect(compare(heard[name] as Recording, programme).worst).toBeLessThanOrEqual(0.5);
    expect(await world("route.device.name")).toBe(device.name);
  });

  test("a pair of channels that a device lacks is trouble, not another pair", async () => {
    await use({ device: await named("far"), first: 2 });
    await page.click("#play");
    expect(await page.ask("stage.ended()")).toEqual({ ended: "trouble", why: "no output" });
  });

  test("one that vanishes stops the sound, and says so", { timeout: 30_000 }, async () => {
    await use({ device: await named("far"), first: 0 });
    await page.ask(`stage.choose("rotation", 1, { loop: true })`);
    await page.click("#play");
    await pause(0.5);
    expect(await world("playing")).toBe(true);
    ask("unload-module", moduleOf("far"));
    await expect.poll(() => world("trouble"), { timeout: 15_000 }).toMatch(/gone|no output|lost/);
    expect(await world("playing")).toBe(false);
    // What is played next does not go to another device by itself.
    await page.click("#play");
    expect(await page.ask("stage.ended()")).toMatchObject({ ended: "trouble" });
    await use({ first: 0 });
    await page.ask(`stage.choose("left-ident", 1, {})`);
    await page.click("#play");
    expect(await page.ask("stage.ended()")).toEqual({ ended: "played" });
  });

  /** What the sound server answers. */
  const ask = (...question: string[]): string =>
    execFileSync(asking ?? "", question, { env: pulse.env, encoding: "utf8" });

  /** The number of the module that is an output. */
  function moduleOf(sink: string): string {
    const line = ask("list", "short", "modules")
      .split("\n")
      .find((one) => one.includes(`sink_name=${sink} `));
    return line?.split("\t")[0] ?? "";
  }
});
