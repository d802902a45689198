import { expect, test } from "vitest";
import { Kept } from "#audio/kept.ts";

/* What is made of blocks as they come: lengths in frames, at a rate of a thousand. */

const rate = 1000;
const block = (frame: number, ...channels: (readonly number[])[]) => ({
  channels: channels.map((samples) => Float32Array.from(samples)),
  frame,
  rate,
});
const noise = (length: number, seed: number) =>
  Array.from({ length }, (_, n) => Math.sin(n * n + seed));

test("blocks are joined; what is missing between them is silence, and is counted", () => {
  const kept = new Kept(true);
  expect(kept.take(block(100, [1, 2], [3, 4]))).toBe(0);
  expect(kept.take(block(104, [5], [6]))).toBe(4);
  expect(kept.capture(rate, 99)).toEqual({
    channels: [Float32Array.of(1, 2, 0, 0, 5), Float32Array.of(3, 4, 0, 0, 6)],
    rate,
  });
  expect(kept.gaps(0.125, rate)).toMatchObject({ missing: 2, blank: 0, behind: 0.12 });
});

test("no more is kept than may be", () => {
  const kept = new Kept(true);
  kept.take(block(0, [1, 2, 3], [4, 5, 6]));
  kept.take(block(3, [7, 8, 9], [1, 2, 3]));
  expect(kept.capture(rate, 4)?.channels[0]).toEqual(Float32Array.of(1, 2, 3, 7));
});

test("one input that was doubled is one channel; nothing but zeros stays two; so does one that differs once", () => {
  const channelsOf = (left: readonly number[], right: readonly number[]) => {
    const kept = new Kept(true);
    kept.take(block(0, left, right));
    return kept.capture(rate, 999)?.channels.length;
  };
  expect(channelsOf(noise(50, 1), noise(50, 1))).toBe(1);
  expect(channelsOf(noise(50, 1), noise(50, 2))).toBe(2);
  expect(channelsOf(Array(50).fill(0), Array(50).fill(0))).toBe(2);
  expect(channelsOf([...noise(50, 1), 0.1], [...noise(50, 1), 0.2])).toBe(2);
});

test("other channels than before are no longer the same input", () => {
  const kept = new Kept(true);
  kept.take(block(0, [1], [2]));
  expect(kept.take(block(1, [1]))).toBe(false);
});

test("zeros between what is heard are counted where they are long, and neither before nor after it", () => {
  const kept = new Kept(false);
  for (const samples of [Array(500).fill(0), noise(50, 1), Array(200).fill(0), noise(50, 2)])
    kept.take(block(kept.frames, samples, samples));
  kept.take(
    block(kept.frames, [...Array(100).fill(0), 1, ...Array(500).fill(0)], noise(601, 1).fill(0)),
  );
  expect(kept.gaps(kept.frames / rate, rate)).toEqual({ missing: 0, blank: 200, behind: 0 });
  expect(kept.capture(rate, 999)).toBeUndefined();
});
