import { describe, expect, test } from "vitest";
import { balance, centredNear, neverCentred } from "#core/checks/balance.ts";
import { type Behaviour, straight } from "#core/rig/behaviour.ts";
import { fromDecibels } from "#core/units/decibels.ts";

const [question] = balance.questions;

/** The likeliest answer, and how likely it is to be in the middle at all. */
function said(behaviour: Partial<Behaviour>) {
  const chances = question?.predict({ ...straight, ...behaviour }, straight) ?? new Float64Array();
  const answers = question?.answers ?? [];
  expect(chances.length).toBe(answers.length);
  expect(chances.reduce((sum, one) => sum + one, 0)).toBeCloseTo(1, 9);
  return {
    likeliest: answers[chances.indexOf(Math.max(...chances))],
    never: chances[answers.indexOf(neverCentred)] ?? 0,
  };
}

const gains = (ll: number, lr: number, rl: number, rr: number): Partial<Behaviour> => ({
  gains: [
    [
      { re: ll, im: 0 },
      { re: lr, im: 0 },
    ],
    [
      { re: rl, im: 0 },
      { re: rr, im: 0 },
    ],
  ],
});

describe("pushing a noise to the middle", () => {
  test.for([
    [-6, "in the middle with the right up 6 dB"],
    [-2, "in the middle with the right up 2 dB"],
    [0, "in the middle as it is"],
    [4, "in the middle with the left up 4 dB"],
    [12, "in the middle with the left up 12 dB"],
  ] as const)("undoes a right side that is %d dB louder", ([right, answer]) => {
    expect(said(gains(1, 0, 0, fromDecibels(right)))).toMatchObject({ likeliest: answer });
  });

  test("goes nowhere where one side is gone, or is upside down", () => {
    expect(said(gains(1, 0, 0, 0)).never).toBeGreaterThan(0.99);
    expect(said(gains(1, 0, 0, -1)).never).toBeGreaterThan(0.9);
  });

  test("is not needed in mono: it is in the middle however it is pushed", () => {
    const { likeliest, never } = said(gains(0.5, 0.5, 0.5, 0.5));
    expect(likeliest).toBe("in the middle as it is");
    expect(never).toBeLessThan(0.05);
  });

  test("pushes the other way where the sides are exchanged, as the headphones themselves may be", () => {
    const weakRight = gains(1, 0, 0, 0.5);
    expect(said({ ...weakRight, worn: -1 }).likeliest).toBe("in the middle with the right up 6 dB");
    expect(said(gains(0, 0.5, 1, 0)).likeliest).toBe("in the middle with the right up 6 dB");
    expect(said({ hearing: [1, 0.5] }).likeliest).toBe("in the middle with the right up 6 dB");
    expect(said({ hearing: [1, 0.5], worn: -1 }).likeliest).toBe(
      "in the middle with the left up 6 dB",
    );
  });
});

test("a finding between two classes may be either", () => {
  expect(centredNear(4)).toEqual(["in the middle with the right up 4 dB"]);
  expect(centredNear(-3)).toEqual([
    "in the middle with the left up 4 dB",
    "in the middle with the left up 2 dB",
  ]);
  expect(centredNear(1)).toEqual([
    "in the middle as it is",
    "in the middle with the right up 2 dB",
  ]);
});
