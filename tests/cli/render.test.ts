import { unzipSync } from "fflate";
import { describe, expect, test } from "vitest";
import wavefile from "wavefile";
import { renderRun } from "#cli/render-run.ts";
import { everyName, everything } from "#core/signals/everything.ts";
import { renderSignal } from "#core/signals/render.ts";

const read = (bytes: Uint8Array) => new wavefile.WaveFile(bytes);

describe("render", () => {
  test("lists every signal with what it is", () => {
    const { code, out } = renderRun(["--list"]);
    expect(code).toBe(0);
    for (const name of everyName) expect(out).toMatch(new RegExp(`^${name} `, "m"));
    expect(out).toContain("NEVER ON EARS");
  });

  test("writes a file of 24 bits that holds the samples, and the loop points", () => {
    const { code, file, out } = renderRun(["--rate", "44100", "stereo-ident", "ident.wav"]);
    expect([code, file?.path, out]).toEqual([0, "ident.wav", expect.stringContaining("EBU R49")]);
    const wav = read(file?.bytes ?? new Uint8Array());
    expect(wav.fmt).toMatchObject({ numChannels: 2, sampleRate: 44_100, bitsPerSample: 24 });
    expect(wav.smpl).toMatchObject({ loops: [{ dwStart: 4 * 44_100, dwEnd: 7 * 44_100 - 1 }] });
    const { left } = renderSignal(everything["stereo-ident"], 44_100, 1);
    const [samples] = wav.getSamples(false, Float64Array) as unknown as readonly Float64Array[];
    const miss = left.reduce(
      (most, x, n) => Math.max(most, Math.abs((samples?.[n] ?? 9) / (2 ** 23 - 1) - x)),
      0,
    );
    expect(miss).toBeLessThan(2 ** -23);
  });

  test("packs all of them with a sheet, and says how far it is", () => {
    const shares: number[] = [];
    const { file } = renderRun(["--rate", "8000", "--pack", "all.zip"], (one) => shares.push(one));
    const files = unzipSync(file?.bytes ?? new Uint8Array());
    expect(Object.keys(files)).toHaveLength(everyName.length + 1);
    expect(shares.at(-1)).toBe(1);
    const sheet = new TextDecoder().decode(files["sheet.txt"]);
    for (const name of Object.keys(files).filter((one) => one.endsWith(".wav")))
      expect(sheet).toContain(name);
    expect(sheet).toContain("Ringing ears");
  }, 60_000);

  test.each([
    [["--rate", "x", "line-up", "x.wav"], "whole hertz"],
    [["--rate", "7", "line-up", "x.wav"], "8000 to 768000"],
    [["nothing-known", "x.wav"], "expected one of left-ident"],
    [["line-up"], "a name and a file"],
    [["--pack"], "one file"],
    [["--loud"], "--loud"],
  ])("%j: a clear word, and 2", (args, word) => {
    const { code, err, file } = renderRun(args);
    expect([code, file]).toEqual([2, undefined]);
    expect(err).toContain(word);
  });
});
