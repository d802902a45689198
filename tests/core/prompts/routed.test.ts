import { describe, expect, test } from "vitest";
import { joined } from "#core/prompts/joined.ts";
import { gapsOf, type Prompt, wordsOf } from "#core/prompts/prompt.ts";
import { type Route, routed } from "#core/prompts/routed.ts";
import { speaking } from "#core/prompts/speaking.ts";
import { phrases } from "#core/prompts/words.ts";
import { admit } from "#core/signals/admit.ts";
import type { Sound } from "#core/signals/sound.ts";
import { toDecibels } from "#core/units/decibels.ts";
import { promptAt } from "#tests/support/prompt-file.ts";

const rate = 48_000;

const spoken = (prompt: Prompt): Float32Array => {
  const words = wordsOf(speaking.en, prompt);
  return joined(
    words.map((word) => promptAt("en", word, rate)),
    rate,
    gapsOf(words),
  );
};

const power = (channel: Float32Array): number =>
  channel.reduce((sum, sample) => sum + sample * sample, 0);

/** What an ear gets that has so much of the left side and so much of the right. */
const ear = ({ left, right }: Sound, fromLeft: number, fromRight: number): Float32Array =>
  left.map((sample, n) => fromLeft * sample + fromRight * (right[n] ?? 0));

/** Feeds as they come to be: both ears, or the one that gets anything. */
const feeds: [name: string, fromLeft: number, fromRight: number][] = [
  ["left alone", 1, 0],
  ["right alone", 0, 1],
  ["a mono sum", 0.5, 0.5],
  ["a lost return", 0.5, -0.5],
];

/** Sentences, words, and numbers that are joined. */
const prompts: Prompt[] = [
  ...phrases.map((prompt): Prompt => ({ prompt })),
  ...[1, 7, 21, 60, 99].map((number) => ({ prompt: "position", number }) as const),
  { prompt: "outputs", numbers: [23, 24] },
];

describe("an instruction in either ear", () => {
  test.for(feeds)("is heard through %s", ([, fromLeft, fromRight]) => {
    for (const prompt of prompts) {
      const samples = spoken(prompt);
      const heard = ear(routed(samples, rate, "either ear"), fromLeft, fromRight);
      const lost = 10 * Math.log10(power(heard) / power(samples));
      expect(Math.abs(lost), JSON.stringify(prompt)).toBeLessThan(6);
    }
  });

  test("would be gone through a lost return from the middle: this is why", () => {
    const middle = routed(spoken({ prompt: "take-them-off" }), rate, "middle");
    expect(power(ear(middle, 0.5, -0.5))).toBe(0);
  });

  test("would be gone from the side that is dead: so would left and right", () => {
    const samples = spoken({ prompt: "listen" });
    expect(power(ear(routed(samples, rate, "left"), 0, 1))).toBe(0);
    expect(power(ear(routed(samples, rate, "right"), 1, 0))).toBe(0);
  });

  test("is the same speech on both sides, 12 ms later on the right", () => {
    const samples = spoken({ prompt: "once-more" });
    const { left, right } = routed(samples, rate, "either ear");
    expect(left.subarray(0, samples.length)).toEqual(samples);
    expect(right.subarray(576)).toEqual(samples);
    expect(power(left.subarray(samples.length)) + power(right.subarray(0, 576))).toBe(0);
  });
});

test("at any rate the right side is late by whole milliseconds as gate one counts them", () => {
  for (const other of [22_050, 44_100, 88_200]) {
    const { left, right } = routed(Float32Array.of(1), other, "either ear");
    const late = right.indexOf(1) - left.indexOf(1);
    expect(late % Math.round(other / 1000)).toBe(0);
    expect(Math.abs(late / other - 0.012)).toBeLessThan(0.0001);
  }
});

test.for(["left", "right", "middle", "either ear"] as Route[])(
  "%s: gate one lets it through, and the samples stay the caller's",
  (route) => {
    const samples = spoken({ prompt: "position", number: 12 });
    const sound = routed(samples, rate, route);
    expect(admit(sound)).not.toHaveProperty("refused");
    const loudest = Math.max(power(sound.left), power(sound.right));
    expect(Math.abs(toDecibels(loudest / power(samples)))).toBeLessThan(1e-6);
    sound.left.fill(1);
    sound.right.fill(1);
    expect(samples.some((sample) => sample === 1)).toBe(false);
  },
);
