import { expect, test } from "vitest";
import {
  deepest,
  hissAudition,
  hissParts,
  programmeThenHiss,
  underSixteenBits,
} from "#core/hearing/hiss.ts";
import { finish } from "#core/hearing/work.ts";
import { admit } from "#core/signals/admit.ts";
import { toDecibels } from "#core/units/decibels.ts";

/** Root mean square of a part of a channel, decibels. */
function levelIn(channel: Float32Array, rate: number, from: number, to: number): number {
  const part = channel.subarray(Math.round(from * rate), Math.round(to * rate));
  return toDecibels(Math.sqrt(part.reduce((sum, x) => sum + x * x, 0) / part.length));
}

const { programme, between, hiss } = hissParts;
const inside = 0.1;

test.for([
  [44_100, 20],
  [48_000, 62],
  [48_000, deepest],
  [96_000, 45],
  [48_000, 0],
  [48_000, -6],
] as const)(
  "at %s Hz the hiss is %s dB below the programme, on both sides, and may be played",
  ([rate, below]) => {
    const sound = finish(programmeThenHiss(below, rate));
    if (sound === undefined) throw new Error("it was refused");
    for (const channel of [sound.left, sound.right]) {
      const first = levelIn(channel, rate, inside, programme - inside);
      const start = programme + between;
      const second = levelIn(channel, rate, start + inside, start + hiss - inside);
      expect(Math.abs(first - second - below)).toBeLessThan(0.3);
      expect(levelIn(channel, rate, programme + 0.01, start - 0.01)).toBe(Number.NEGATIVE_INFINITY);
    }
    expect(admit(sound)).not.toHaveProperty("refused");
  },
);

test("its sides have nothing in common", () => {
  const sound = finish(programmeThenHiss(40, 48_000));
  const [left, right] = [sound?.left ?? [], sound?.right ?? []];
  const product = (one: ArrayLike<number>, other: ArrayLike<number>) =>
    Array.from(one).reduce((sum, x, n) => sum + x * (other[n] ?? 0), 0);
  const alike = product(left, right) / Math.sqrt(product(left, left) * product(right, right));
  expect(Math.abs(alike)).toBeLessThan(0.05);
});

test("further below it is not played", () => {
  expect(finish(hissAudition(deepest + 1, 48_000))).toBeUndefined();
  expect(finish(hissAudition(Number.NaN, 48_000))).toBeUndefined();
  expect(finish(hissAudition(Number.POSITIVE_INFINITY, 48_000))).toBeUndefined();
});

test("16 bits end at −98 dBFS", () => {
  expect(underSixteenBits(-50, 47)).toBe(false);
  expect(underSixteenBits(-50, 49)).toBe(true);
});
