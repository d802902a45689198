import { expect, test } from "vitest";
import { inTurn } from "#core/hearing/in-turn.ts";
import type { Sound } from "#core/signals/sound.ts";

const of = (samples: readonly number[], rate = 10): Sound => ({
  left: Float32Array.from(samples),
  right: Float32Array.from(samples, (sample) => -sample),
  rate,
});

test("one after the other, with silence between and at the end", () => {
  const joined = inTurn([of([1, 2]), of([3])], 0.2);
  expect([...joined.left]).toEqual([1, 2, 0, 0, 3, 0, 0]);
  expect([...joined.right].map((sample) => -sample + 0)).toEqual([1, 2, 0, 0, 3, 0, 0]);
});

test("nothing, and two rates, are refused", () => {
  expect(() => inTurn([], 1)).toThrow("no sound");
  expect(() => inTurn([of([1]), of([1], 20)], 1)).toThrow("rates");
});
