import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, test } from "vitest";
import { openSlices } from "#cli/file-slices.ts";
import { type Analysis, analyseRecording } from "#recording/analyse.ts";
import { type Block, blocksOf, wholeOf } from "#recording/blocks.ts";
import { layoutOf } from "#recording/layout.ts";
import { longRecording } from "./long.ts";
import { chunk, format, letters, number, riff } from "./made.ts";
import { growthOf, sparse } from "./sparse.ts";

const folder = mkdtempSync(join(tmpdir(), "huge-"));
afterAll(() => rmSync(folder, { recursive: true }));

const gibi = 2 ** 30;
const ones = number(2 ** 32 - 1, 4);
const f64 = { code: 3, bits: 64, channels: 8 };

/** The head of an RF64 file: sizes of 'data', and of a chunk that is no sound. */
const sizes = (data: number, junk: number) =>
  chunk("ds64", [
    ...number(0, 8),
    ...number(data, 8),
    ...number(0, 8),
    ...number(1, 4),
    ...letters("JUNK"),
    ...number(junk, 8),
  ]);

type Heard = readonly [at: number, channel: number, sample: number];

const heardIn = ({ from, channels }: Block): readonly Heard[] =>
  channels.flatMap((samples, channel) => {
    const at = samples.findIndex((sample) => sample !== 0);
    return at < 0 ? [] : [[from + at, channel, samples[at] ?? 0] as const];
  });

/** What is read of a file: of each channel of a block the first that is not silent, and how many samples a channel. Each test has one that is not silent, and how many samples a channel. */
async function readThrough(path: string) {
  const file = await openSlices(path);
  if ("missing" in file) throw new Error(file.missing);
  const layout = await layoutOf(file.slices);
  if ("trouble" in layout) throw new Error(layout.trouble);
  const heard: Heard[] = [];
  let frames = 0;
  const growth = await growthOf(async () => {
    for await (const block of blocksOf(file.slices, layout, wholeOf(layout))) {
      frames += block.channels[0]?.length ?? 0;
      heard.push(...heardIn(block));
    }
  });
  await file.close();
  return { layout, heard, frames, growth };
}

async function analysed(path: string): Promise<Analysis> {
  const file = await openSlices(path);
  if ("missing" in file) throw new Error(file.missing);
  const working = analyseRecording(file.slices);
  for (;;) {
    const { done, value } = await working.next();
    if (done) return file.close().then(() => value);
  }
}

const half = new Uint8Array(new Float64Array([0.5]).buffer);

describe("files beyond four gigabytes, which take no disk", () => {
  test("a signal beyond a chunk of 4.5 GiB, in a minute of eight channels, is found and measured", async () => {
    const path = join(folder, "junk.wav");
    const { disk, from } = longRecording(path, { junk: 4.5 * gibi, seconds: 60, played: 40 });
    expect(from).toBeGreaterThan(4.5 * gibi);
    expect(disk).toBeLessThan(64e6);
    let analysis: Analysis | undefined;
    const growth = await growthOf(async () => {
      analysis = await analysed(path);
    });
    expect(analysis).toMatchObject({
      file: { container: "RF64", from, frames: 60 * 48_000, odd: [] },
      found: 1,
      playings: [{ channels: [3, 6], measured: { stretches: "both" } }],
    });
    expect(growth).toBeLessThan(200e6);
  });

  test("RF64: 4.3 GB of sound are laid out, and the last second read", async () => {
    const path = join(folder, "sound.wav");
    const bytes = 4.3e9 - (4.3e9 % 64);
    const head = riff([...sizes(bytes, 0), ...format(f64), ...letters("data"), ...ones], {
      name: "RF64",
      size: 2 ** 32 - 1,
    });
    const frames = bytes / 64;
    sparse(path, head.length + bytes, [
      [0, head],
      [head.length + bytes - 8, half],
    ]);
    const file = await openSlices(path);
    if ("missing" in file) throw new Error(file.missing);
    const layout = await layoutOf(file.slices);
    expect(layout).toMatchObject({ frames, odd: [] });
    if ("trouble" in layout) throw new Error(layout.trouble);
    const last = blocksOf(file.slices, layout, { from: frames - 1, to: frames, channels: [6, 7] });
    const { value } = await last.next();
    expect(value).toMatchObject({ from: frames - 1, strange: 0 });
    expect(value && "channels" in value && value.channels).toEqual([
      new Float32Array([0]),
      new Float32Array([0.5]),
    ]);
    await file.close();
  });

  test("600 MB of sound go through memory that does not grow with them", async () => {
    const path = join(folder, "long.wav");
    const bytes = 6e8;
    const head = riff([...format(f64), ...letters("data"), ...number(bytes, 4)]);
    sparse(path, head.length + bytes, [
      [0, head],
      [head.length + bytes - 16, half],
    ]);
    const { heard, frames, growth } = await readThrough(path);
    expect([frames, heard]).toEqual([bytes / 64, [[bytes / 64 - 1, 6, 0.5]]]);
    expect(growth).toBeLessThan(200e6);
  });
});
