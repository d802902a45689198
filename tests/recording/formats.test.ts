import { describe, expect, test } from "vitest";
import wavefile from "wavefile";
import { codings } from "#recording/format-chunk.ts";
import { read, wave, worst } from "./read.ts";

/** How the package names a coding, the greatest whole number, and one step. */
const written = {
  "unsigned 8": { name: "8", bits: 8 },
  "signed 16": { name: "16", bits: 16 },
  "signed 24": { name: "24", bits: 24 },
  "signed 32": { name: "32", bits: 32 },
  "float 32": { name: "32f", bits: 24 },
  "float 64": { name: "64", bits: 24 },
} as const;

const every = codings.flatMap((coding) =>
  [1, 2, 3, 8].flatMap((channels) =>
    [8000, 44_100, 96_000, 192_000].map((rate) => ({ coding, channels, rate })),
  ),
);

describe("files of the package wavefile", () => {
  test.for(every)("$coding, $channels channels, $rate Hz", async ({ coding, channels, rate }) => {
    const { name, bits } = written[coding];
    const samples = wave(channels, 333);
    const file = new wavefile.WaveFile();
    const full = 2 ** (bits - 1);
    const whole = (x: number) => Math.round(x * full) + (coding === "unsigned 8" ? 128 : 0);
    const given = coding.startsWith("float")
      ? samples
      : samples.map((one) => one.map((x) => whole(x)));
    file.fromScratch(channels, rate, name, given);
    const { layout, channels: found, strange } = await read(file.toBuffer());
    expect(layout).toMatchObject({ coding, channels, rate, frames: 333, odd: [] });
    expect(worst(found, samples)).toBeLessThanOrEqual(0.5 / full + 2 ** -25);
    expect(strange).toBe(0);
  });

  test("RF64 as the package writes it", async () => {
    const file = new wavefile.WaveFile();
    const samples = wave(2, 100);
    file.fromScratch(2, 48_000, "32f", samples, { container: "RF64" });
    const { layout, channels } = await read(file.toBuffer());
    expect(layout).toMatchObject({ container: "RF64", frames: 100, odd: [] });
    expect(worst(channels, samples)).toBeLessThan(1e-7);
  });
});
