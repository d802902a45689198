import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, test } from "vitest";
import { everyName, everything } from "#core/signals/everything.ts";
import { renderSignal } from "#core/signals/render.ts";
import type { Sound } from "#core/signals/sound.ts";
import { signalFile } from "#pack/pack.ts";
import { wavOf } from "#pack/wav.ts";
import { filtered, outsideHere as here, numbersAfter, row, said } from "./outside-programs.ts";

const rate = 48_000;
const folder = mkdtempSync(join(tmpdir(), "signals-"));
afterAll(() => rmSync(folder, { recursive: true }));

function written(name: string, bytes: Uint8Array): string {
  const path = join(folder, `${name}.wav`);
  writeFileSync(path, bytes);
  return path;
}

const decibels = (samples: Float32Array): number =>
  10 * Math.log10(samples.reduce((sum, x) => sum + x * x, 0) / samples.length);

/** Integrated loudness by ffmpeg's EBU R128 meter. */
const loudness = (path: string): number =>
  numbersAfter(
    filtered(path, "ebur128=metadata=1,ametadata=print:key=lavfi.r128.I:file=-"),
    "lavfi.r128.I=",
  ).at(-1) ?? Number.NaN;

/** Mean phase between the channels by ffmpeg's meter, of a time: 1 alike, −1 opposite. */
function phase(path: string, start: number, length: number): number {
  const meter = "aphasemeter=video=0,ametadata=print:key=lavfi.aphasemeter.phase:file=-";
  const all = numbersAfter(
    filtered(path, meter, "-ss", `${start}`, "-t", `${length}`),
    "lavfi.aphasemeter.phase=",
  );
  return all.reduce((sum, one) => sum + one, 0) / all.length;
}

/** A sound of which one channel is silent. */
const leftOnly = (sound: Sound): Sound => ({
  ...sound,
  right: new Float32Array(sound.left.length),
});

describe.runIf(here)("an outside judge reads the files", () => {
  test.for(everyName.filter((name) => name !== "silence"))(
    "sox: %s has the level, the peak and the offset it should",
    (name) => {
      const { left, right } = renderSignal(everything[name], rate, 1);
      const text = said("sox", written(name, signalFile(name, rate)), "-n", "stats");
      const [peak = 0] = row(text, "Pk lev dB");
      const [, ...levels] = row(text, "RMS lev dB");
      expect(peak).toBeLessThanOrEqual(everything[name].peak + 0.01);
      for (const offset of row(text, "DC offset")) expect(Math.abs(offset)).toBeLessThan(1e-4);
      for (const [at, channel] of [left, right].entries())
        if (channel.some((x) => x !== 0))
          expect(Math.abs((levels[at] ?? 0) - decibels(channel))).toBeLessThan(0.01);
    },
  );

  // ITU-R BS.1770-4 with the tolerance of EBU Tech 3341, 0.1 LU: values computed by its formula.
  test("ffmpeg: line-up tone is −17.99 LUFS in both channels and −21.00 in one", () => {
    const sound = renderSignal(everything["line-up"], rate, 1);
    expect(Math.abs(loudness(written("both", wavOf(sound))) + 17.99)).toBeLessThan(0.1);
    expect(Math.abs(loudness(written("one", wavOf(leftOnly(sound)))) + 21)).toBeLessThan(0.1);
  });

  test("ffmpeg: the identification of EBU R49 is about −18.16 LUFS", () => {
    const path = written("r49", signalFile("stereo-ident", rate));
    expect(Math.abs(loudness(path) + 18.16)).toBeLessThan(0.1);
  });

  test("ffmpeg: of the pair one burst is alike on both channels, the other opposite", () => {
    const path = written("pair", signalFile("burst-pair", rate));
    const bursts = everything["burst-pair"].stretches(1);
    const expected = bursts.map(({ left, right }) => left * right);
    const found = bursts.map(({ start, end }) => Math.round(phase(path, start, end - start)));
    expect(found).toEqual(expected);
    expect(new Set(found)).toEqual(new Set([1, -1]));
  });

  test("ffmpeg: a break of the identification lasts a quarter of a second", () => {
    const path = written("breaks", signalFile("stereo-ident", rate));
    const detect = "pan=mono|c0=c0,silencedetect=noise=-24dB:duration=0.2";
    const lengths = numbersAfter(filtered(path, detect), "silence_duration: ");
    expect(lengths.length).toBeGreaterThanOrEqual(4);
    for (const length of lengths.slice(0, 4)) expect(Math.abs(length - 0.25)).toBeLessThan(0.003);
  });
});

if (!here)
  console.warn("sox and ffmpeg are not installed: the files were read by no outside judge");
