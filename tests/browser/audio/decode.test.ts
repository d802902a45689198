import { describe, expect, test, vi } from "vitest";
import { server } from "vitest/browser";
import { decode, type FileTrouble } from "#audio/decode.ts";
import type { OwnSound } from "#core/hearing/own-sound.ts";

/** A WAV file of 16 bits: channels of samples within plus and minus 1. */
function wav(channels: readonly Float32Array[], rate: number): Blob {
  const [count, length] = [channels.length, channels[0]?.length ?? 0];
  const header = new DataView(new ArrayBuffer(44));
  const text = (at: number, letters: string) => {
    for (const [n, letter] of [...letters].entries()) header.setUint8(at + n, letter.charCodeAt(0));
  };
  text(0, "RIFF");
  header.setUint32(4, 36 + 2 * count * length, true);
  text(8, "WAVEfmt ");
  header.setUint32(16, 16, true);
  header.setUint16(20, 1, true); // plain samples
  header.setUint16(22, count, true);
  header.setUint32(24, rate, true);
  header.setUint32(28, 2 * count * rate, true);
  header.setUint16(32, 2 * count, true);
  header.setUint16(34, 16, true);
  text(36, "data");
  header.setUint32(40, 2 * count * length, true);
  const samples = new Int16Array(count * length);
  for (const [side, channel] of channels.entries()) {
    for (const [n, sample] of channel.entries()) samples[n * count + side] = sample * 32_767;
  }
  return new Blob([header, samples], { type: "audio/wav" });
}

const sine = (frequency: number, seconds: number, rate: number, amplitude = 0.3) =>
  Float32Array.from(
    { length: Math.round(seconds * rate) },
    (_, n) => amplitude * Math.sin((2 * Math.PI * frequency * n) / rate),
  );

async function taken(file: Blob, rate: number): Promise<OwnSound> {
  const own = await decode(file, rate);
  if ("refused" in own) throw new Error(own.refused);
  return own;
}

const rms = (samples: Float32Array) =>
  Math.sqrt(samples.reduce((sum, x) => sum + x * x, 0) / samples.length);

/** How often a channel goes up through zero in its second second. */
const cycles = (samples: Float32Array, rate: number) =>
  samples
    .subarray(rate, 2 * rate)
    .reduce((count, x, n, all) => count + (n > 0 && x >= 0 && (all[n - 1] ?? 0) < 0 ? 1 : 0), 0);

describe("a sound file", () => {
  test("is heard with its sides, as loud as a test signal", async () => {
    const rate = 48_000;
    const file = wav([sine(440, 2, rate), sine(1000, 2, rate)], rate);
    const { sound, notes } = await taken(file, rate);
    expect(sound.left.length).toBe(2 * rate);
    expect([sound.left, sound.right].map((side) => cycles(side, rate))).toEqual([440, 1000]);
    expect(20 * Math.log10(rms(sound.left))).toBeCloseTo(-26, 0);
    expect(notes).toEqual([]);
  });

  test("of another rate becomes one of the rate that is asked for", async () => {
    const { sound } = await taken(wav([sine(440, 2, 22_050)], 22_050), 48_000);
    expect(sound.rate).toBe(48_000);
    expect(Math.abs(sound.left.length - 96_000)).toBeLessThan(100);
    expect(cycles(sound.left, 48_000)).toBe(440);
    expect(sound.right).toEqual(sound.left);
  });

  test("of three minutes is cut to one, and only what that needs is decoded", async () => {
    const rate = 48_000;
    const file = wav([sine(440, 180, rate)], rate);
    const decoded = vi.spyOn(OfflineAudioContext.prototype, "decodeAudioData");
    const { sound, notes } = await taken(file, rate);
    const bytes = decoded.mock.calls.map(([piece]) => piece.byteLength);
    decoded.mockRestore();
    expect(sound.left.length).toBe(60 * rate);
    expect(notes).toEqual(["first minute only"]);
    expect(Math.abs(cycles(sound.left, rate) - 440)).toBeLessThan(2);
    expect(Math.max(...bytes)).toBeLessThan(file.size);
  });

  test("of many channels is heard by its first two, and it is said", async () => {
    const sides = [440, 1000, 100, 200].map((frequency) => sine(frequency, 2, 44_100));
    const { sound, notes } = await taken(wav(sides, 44_100), 44_100);
    expect([sound.left, sound.right].map((side) => cycles(side, 44_100))).toEqual([440, 1000]);
    expect(notes).toEqual(["first two channels only"]);
  });
});

describe("refused", () => {
  const junk = new Blob([new Uint8Array(100_000).map((_, n) => (n * 7919) % 251)]);
  // WebKitGTK 2.50.6 decodes it to a sound of no length; others throw.
  const ofNothing = server.browser === "webkit" ? "too short" : "not a sound";
  const refusals: [why: string, file: Blob, refused: FileTrouble][] = [
    ["junk", junk, "not a sound"],
    ["an empty file", new Blob([]), "not a sound"],
    ["a text called a sound", new Blob(["la la la"], { type: "audio/wav" }), "not a sound"],
    ["a tenth of a second", wav([sine(440, 0.1, 48_000)], 48_000), "too short"],
    ["a header without samples", wav([new Float32Array()], 48_000), ofNothing],
    ["a second of nothing", wav([new Float32Array(48_000)], 48_000), "silent"],
  ];

  test.for(refusals)("%s", async ([, file, refused]) => {
    expect(await decode(file, 48_000)).toEqual({ refused });
  });

  test("over 200 MB: not a byte is read, nothing is fetched", async () => {
    const file = wav([sine(440, 1, 48_000)], 48_000);
    Object.defineProperty(file, "size", { value: 200_000_001 });
    const [read, load] = [vi.spyOn(file, "slice"), vi.fn()];
    expect(await decode(file, 48_000, load)).toEqual({ refused: "too big" });
    expect(read).not.toHaveBeenCalled();
    expect(load).not.toHaveBeenCalled();
  });

  test("a file that cannot be read any more", async () => {
    const file = wav([sine(440, 1, 48_000)], 48_000);
    const gone = () => Promise.reject(new DOMException("gone", "NotReadableError"));
    vi.spyOn(file, "slice").mockReturnValue(Object.assign(new Blob(), { arrayBuffer: gone }));
    expect(await decode(file, 48_000)).toEqual({ refused: "unreadable" });
  });

  test("what decodes cannot be fetched", async () => {
    const load = () => Promise.reject(new TypeError("no network"));
    const file = wav([sine(440, 1, 48_000)], 48_000);
    expect(await decode(file, 48_000, load)).toEqual({ refused: "not loaded" });
  });
});
