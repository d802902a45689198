import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { analyseRun } from "#cli/analyse-run.ts";
import { openSlices } from "#cli/file-slices.ts";
import type { EntryResult, MeasuredResult, Measurement } from "#cli/measurement-format.ts";
import { numbersAfter, outsideHere, row, said } from "./outside-programs.ts";

const folder = mkdtempSync(join(tmpdir(), "measuring-"));
afterAll(() => rmSync(folder, { recursive: true }));

const path = (name: string) => join(folder, `${name}.wav`);
const sox = (...args: readonly string[]) => said("sox", "-D", ...args);

/** The inside of the first stretch of tones. */
const tones = ["trim", "1.1", "3.8"] as const;
/** What stands here for the level of nothing at all. */
const quiet = "-999";

/** Root mean square of each channel in the first stretch by sox, dBFS. */
function levelsBySox(name: string): readonly number[] {
  const text = said("sox", path(name), "-n", ...tones, "stats");
  const [, ...levels] = row(text.replaceAll("-inf", quiet), "RMS lev dB");
  return levels;
}

/** The same by ffmpeg. */
const levelsByFfmpeg = (name: string): readonly number[] => {
  const filter = "atrim=start=1.1:end=4.9,astats=measure_overall=none:measure_perchannel=RMS_level";
  const text = said("ffmpeg", "-hide_banner", "-i", path(name), "-af", filter, "-f", "null", "-");
  return numbersAfter(text.replaceAll("-inf", quiet), "RMS level dB: ");
};

/** The phase between a channel of one file and a channel of another by ffmpeg's meter: 2 lr / (l² + r²), 1 alike, −1 opposite. */
function phase(one: string, first: number, other: string, second: number): number {
  const meter = "aphasemeter=video=0,ametadata=print:key=lavfi.aphasemeter.phase:file=-";
  const graph = `[0:a]pan=mono|c0=c${first}[a];[1:a]pan=mono|c0=c${second}[b];[a][b]amerge=inputs=2,atrim=start=1.1:end=4.9,${meter}`;
  const text = said(
    "ffmpeg",
    "-hide_banner",
    ...["-i", path(one), "-i", path(other), "-filter_complex", graph, "-f", "null", "-"],
  );
  const all = numbersAfter(text, "lavfi.aphasemeter.phase=");
  return all.reduce((sum, one) => sum + one, 0) / all.length;
}

async function measured(name: string): Promise<MeasuredResult> {
  const { out, err } = await analyseRun([path(name)], openSlices);
  const { playings }: Measurement = JSON.parse(out || `{"playings":[]}`);
  const [first] = playings;
  if (first?.result !== "measured") throw new Error(`${name}: ${err}${JSON.stringify(first)}`);
  return first;
}

/** What sox did to the pair of channels, and its matrix: rows the channels that come out. */
const wires = [
  { name: "straight", remix: ["1", "2"] },
  { name: "swapped", remix: ["2", "1"] },
  { name: "one leg upside down", remix: ["1", "2v-1"] },
  { name: "6 dB down", remix: ["1", "2v0.5"] },
  { name: "crosstalk upside down", remix: ["1v1,2v-0.1", "2v1,1v-0.1"] },
  { name: "crosstalk the same way", remix: ["1v0.8,2v0.02", "2v-0.7,1v0.3"] },
  { name: "the return lost", remix: ["1v0.5,2v-0.5", "1v-0.5,2v0.5"] },
] as const;

const sides = ["left", "right"] as const;

/** By how much a channel of a file is louder than what was sent, by sox and by ffmpeg, decibels. */
const gainsOutside = (alone: string, programme: number, input: number): readonly number[] =>
  [levelsBySox, levelsByFfmpeg].map(
    (levels) => (levels(alone)[input] ?? 0) - (levels("sent")[programme] ?? 0),
  );

/** As near as what they print: sox two places, of each of two levels; ffmpeg six. */
function agrees({ level = 0, polarity }: EntryResult, gains: readonly number[], met: number) {
  const [sox = 0, ffmpeg = 0] = gains;
  expect(Math.abs(level - sox)).toBeLessThan(0.011);
  expect(Math.abs(level - ffmpeg)).toBeLessThan(0.001);
  const size = (polarity ?? 0) * 10 ** (level / 20);
  expect(Math.abs(met - (2 * size) / (1 + size ** 2))).toBeLessThan(0.005);
}

describe.runIf(outsideHere)("sox and ffmpeg measure the same files", () => {
  beforeAll(() => {
    said("npm", "run", "--silent", "render", "--", "multitone", path("sent"));
    sox(path("sent"), path("left"), "remix", "1", "0");
    sox(path("sent"), path("right"), "remix", "0", "2");
  });

  test.for(wires)("$name: the level of every entry, and its phase", async ({ name, remix }) => {
    sox(path("sent"), path(name), "remix", ...remix);
    const { inputs } = await measured(name);
    for (const [programme, side] of sides.entries()) {
      const alone = `${name} ${side}`;
      sox(path(side), path(alone), "remix", ...remix);
      for (const [input, ours] of inputs.entries()) {
        const gains = gainsOutside(alone, programme, input);
        if (ours[side].carried) agrees(ours[side], gains, phase("sent", programme, alone, input));
        else expect(Math.max(...gains)).toBeLessThan(-80);
      }
    }
  });

  test("both programmes together: correlation of the channels", async () => {
    sox(path("sent"), path("mixed"), "remix", "1v0.8,2v0.3", "2v0.6,1v0.4");
    const { inputs } = await measured("mixed");
    const gain = (at: number, side: "left" | "right") =>
      10 ** ((inputs[at]?.[side].level ?? 0) / 20);
    const dot = gain(0, "left") * gain(1, "left") + gain(0, "right") * gain(1, "right");
    const size = (at: number) => Math.hypot(gain(at, "left"), gain(at, "right"));
    const correlation = dot / (size(0) * size(1));
    // The powers of sum and difference, by sox, say the same.
    sox(path("mixed"), path("sum"), "remix", "1v1,2v1", "1v1,2v-1");
    const [sum = 0, difference = 0] = levelsBySox("sum").map((level) => 10 ** (level / 10));
    const [left = 0, right = 0] = levelsBySox("mixed").map((level) => 10 ** (level / 20));
    expect(Math.abs((sum - difference) / (4 * left * right) - correlation)).toBeLessThan(0.005);
  });

  test("delay, and one side later than the other", async () => {
    sox(path("sent"), path("late"), "pad", "0.3", "1", "delay", "0", "48s");
    const { delay, between, from, inputs } = await measured("late");
    const left = from + delay.value + (inputs[0]?.left.late?.value ?? 9);
    expect(Math.abs(left - 0.3)).toBeLessThan(1e-6);
    expect(Math.abs((between?.value ?? 0) - 0.001)).toBeLessThan(1e-6);
  });

  test("noise that sox made, as loud as sox and ffmpeg say", async () => {
    const hiss = ["synth", "9.6", "whitenoise", "vol", "0.003"];
    sox("-r", "48000", "-n", "-c", "2", "-b", "24", path("hiss"), ...hiss);
    sox("-m", "-v", "1", path("sent"), "-v", "1", path("hiss"), path("noisy"));
    const { inputs } = await measured("noisy");
    // White to 24 kHz; ours is what lies below the highest tone, 15.037 kHz.
    const share = 10 * Math.log10(15_037 / 24_000);
    for (const levels of [levelsBySox("hiss"), levelsByFfmpeg("hiss")])
      for (const [at, level] of levels.entries())
        expect(Math.abs((inputs[at]?.noise ?? 0) - (level + share))).toBeLessThan(0.5);
  });

  test("another rate, more channels and 16 bits, made by sox and by ffmpeg", async () => {
    sox(
      path("sent"),
      "-r",
      "44100",
      "-b",
      "16",
      path("six"),
      "remix",
      "0",
      "0",
      "1v0.5",
      "0",
      "2",
      "0",
    );
    const one = await measured("six");
    expect(one.channels).toEqual([3, 5]);
    expect(Math.abs((one.inputs[0]?.left.level ?? 0) + 6.02)).toBeLessThan(0.02);
    said(
      "ffmpeg",
      "-v",
      "error",
      "-i",
      path("sent"),
      "-ar",
      "96000",
      "-c:a",
      "pcm_f32le",
      "-rf64",
      "always",
      path("wide"),
    );
    const other = await measured("wide");
    expect(Math.abs(other.inputs[1]?.right.level ?? 9)).toBeLessThan(0.02);
    expect(Math.abs(other.drift.value)).toBeLessThan(0.1);
  });
});

if (!outsideHere) console.warn("sox and ffmpeg are not installed: nobody else measured the files");
