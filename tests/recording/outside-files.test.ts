import { spawnSync } from "node:child_process";
import { describe, expect, test } from "vitest";
import { outsideHere } from "#tests/reference/outside-programs.ts";
import { read, readAll, wave, worst } from "./read.ts";
import { inMemory } from "./slices.ts";

/** What a program writes, with samples handed to it as 64-bit floats. */
function outside(program: string, args: readonly string[], samples: readonly number[][]) {
  const frames = samples[0]?.length ?? 0;
  const input = new Float64Array(frames * samples.length);
  for (const [at, channel] of samples.entries())
    for (const [n, x] of channel.entries()) input[n * samples.length + at] = x;
  const options = { input: new Uint8Array(input.buffer), maxBuffer: 2 ** 26 };
  const { stdout, stderr, status } = spawnSync(program, args, options);
  if (status !== 0) throw new Error(`${program} ${args.join(" ")}: ${stderr}`);
  return new Uint8Array(stdout);
}

const bySox = (bits: string, type: string, channels: number) => [
  ...["-D", "-t", "f64", "-r", "48000", "-c", `${channels}`, "-"],
  ...["-t", "wav", "-e", type, "-b", bits, "-"],
];
const byFfmpeg = (codec: string, channels: number, ...more: readonly string[]) => [
  ...["-v", "error", "-f", "f64le", "-ar", "48000", "-ac", `${channels}`, "-i", "-"],
  ...["-c:a", codec, ...more, "-f", "wav", "-"],
];

const steps: Readonly<Record<string, number>> = {
  8: 2 ** -7,
  16: 2 ** -15,
  24: 2 ** -23,
  32: 2 ** -31,
};
const soxFiles = [
  ["8", "unsigned-integer"],
  ["16", "signed-integer"],
  ["24", "signed-integer"],
  ["32", "signed-integer"],
  ["32", "floating-point"],
  ["64", "floating-point"],
].flatMap(([bits = "", type = ""]) => [1, 2, 6].map((channels) => ({ bits, type, channels })));

const ffmpegFiles = [
  "pcm_u8",
  "pcm_s16le",
  "pcm_s24le",
  "pcm_s32le",
  "pcm_f32le",
  "pcm_f64le",
].flatMap((codec) => [1, 2, 8].map((channels) => ({ codec, channels })));

// Both write to a pipe here, so that neither can go back and say how long the sound is.
describe.runIf(outsideHere)("files of other programs, written to a pipe", () => {
  test.for(soxFiles)(
    "sox: $bits bits, $type, $channels channels",
    async ({ bits, type, channels }) => {
      const samples = wave(channels, 500);
      const { layout, channels: found } = await read(
        outside("sox", bySox(bits, type, channels), samples),
      );
      expect(layout).toMatchObject({ channels, rate: 48_000, frames: 500 });
      expect(layout.odd).not.toEqual([]);
      expect(worst(found, samples)).toBeLessThanOrEqual((steps[bits] ?? 0) + 2 ** -24);
    },
  );

  test.for(ffmpegFiles)("ffmpeg: $codec, $channels channels", async ({ codec, channels }) => {
    const samples = wave(channels, 500);
    const bits = codec.replace(/\D+$/, "").replace(/^\D+/, "");
    const { layout, channels: found } = await read(
      outside("ffmpeg", byFfmpeg(codec, channels), samples),
    );
    expect(layout).toMatchObject({ channels, frames: 500, odd: ["length not written"] });
    expect(worst(found, samples)).toBeLessThanOrEqual((steps[bits] ?? 0) + 2 ** -24);
  });

  test("ffmpeg: RF64", async () => {
    const samples = wave(2, 500);
    const { layout, channels } = await read(
      outside("ffmpeg", byFfmpeg("pcm_s24le", 2, "-rf64", "always"), samples),
    );
    expect(layout).toMatchObject({ container: "RF64", frames: 500 });
    expect(worst(channels, samples)).toBeLessThanOrEqual(2 ** -23);
  });

  test.for(["pcm_alaw", "pcm_mulaw", "adpcm_ms", "adpcm_ima_wav"])(
    "ffmpeg: %s is refused by name",
    async (codec) => {
      const file = outside("ffmpeg", byFfmpeg(codec, 1), wave(1, 5000));
      expect(await readAll(inMemory(file).slices)).toMatchObject({ trouble: "compressed" });
    },
  );

  test.for([
    ["aiff", ["AIFF"]],
    ["flac", ["FLAC"]],
    ["ogg", ["Ogg"]],
    ["mp3", ["MP3"]],
    ["adts", ["AAC"]],
    ["caf", ["CAF"]],
    ["au", ["AU"]],
    ["w64", ["Wave64"]],
    ["webm", ["WebM", "Matroska"]],
  ] as const)("ffmpeg: %s is said to be %j", async ([type, kind]) => {
    const args = ["-v", "error", "-f", "f64le", "-ar", "48000", "-ac", "2", "-i", "-", "-f", type];
    const file = outside("ffmpeg", [...args, "-"], wave(2, 9600));
    expect(await readAll(inMemory(file).slices)).toEqual({ trouble: "other kind", found: kind });
  });
});

if (!outsideHere) console.warn("sox and ffmpeg are not installed: no file of theirs was read");
