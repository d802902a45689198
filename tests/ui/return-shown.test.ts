import { describe, expect, test } from "vitest";
import type { MeasuredGains } from "#core/checks/finding.ts";
import { measureReturn } from "#core/measurement/measured.ts";
import { matrixOf, notHealthy, type Taken } from "#core/proving/lead-matrix.ts";
import { captured, type Wire } from "#tests/browser/support/returned.ts";
import { effectIn, shownEntries } from "#ui/screens/return-shown.ts";
import { overLines, sideLines } from "#ui/screens/return-words.ts";
import { words } from "#ui/words/english.ts";

const known = new Map<string, Taken>();

/** A wire as it was measured, at a level of the output; once. */
function taken(wire: Wire, level = -50): Taken {
  const key = JSON.stringify([wire, level]);
  const one = known.get(key) ?? measuredAt(wire, level);
  known.set(key, one);
  return one;
}

function measuredAt(wire: Wire, level: number): Taken {
  const measured = measureReturn(captured(wire, { loud: level + 26 }));
  if ("refused" in measured) throw new Error(measured.refused);
  return { measured, level };
}

const healthy = taken([1, 0, 0, 1]);
/** An interface whose right input takes half of it. */
const lopsided = taken([1, 0, 0, 0.5]);

/** The matrix; both inputs were heard. */
function matrix(one: Taken, against: Taken | undefined) {
  const told = matrixOf(one, against);
  if (told === undefined) throw new Error("there is no matrix");
  return told;
}

const rounded = (gains: MeasuredGains) =>
  gains.map(([re, im]) => [Number(re.toFixed(2)) + 0, Number(im.toFixed(2)) + 0]);

describe("the matrix of a lead", () => {
  test.each([
    ["straight", [1, 0, 0, 1]],
    ["left gone", [0, 0, 0, 1]],
    ["swapped", [0, 1, 1, 0]],
    ["difference", [0.5, -0.5, -0.5, 0.5]],
    ["one side inverted", [1, 0, 0, -1]],
    ["right weak", [1, 0, 0, 0.5]],
  ] as const)("against a healthy one: %s", (effect, wire) => {
    const told = matrix(taken(wire), healthy);
    expect(rounded(told.gains)).toEqual(wire.map((gain) => [gain, 0]));
    expect(effectIn(told)).toBe(effect);
    expect(told.error).toBeGreaterThan(0);
    expect(told.error).toBeLessThan(0.001);
  });

  test("does not depend on how the inputs are set, nor on the level it was measured at", () => {
    const told = matrix(taken([0.5, 0.5, 0.25, 0.25], -41), lopsided);
    expect(rounded(told.gains)).toEqual([0.5, 0.5, 0.5, 0.5].map((gain) => [gain, 0]));
  });

  test("as it comes counts against its largest gain, so that a loss of both does not show", () => {
    const told = matrix(taken([0.5, 0, 0, 0.5]), undefined);
    expect(rounded(told.gains)).toEqual([1, 0, 0, 1].map((gain) => [gain, 0]));
    expect(told.level).toBe("as it comes");
  });
});

describe("of a lead that is meant to bring something else", () => {
  const oneSignal = taken([0.8, 0, 0, 0]);
  const toBoth = taken([0.8, 0, 0.4, 0]);
  test("one signal: against a good one of its kind", () => {
    const told = matrixOf(taken([0.4, 0, 0, 0]), oneSignal, [1, 0, 0, 0]);
    expect(told && rounded(told.gains)).toEqual([0.5, 0, 0, 0].map((gain) => [gain, 0]));
    expect(notHealthy(oneSignal, [1, 0, 0, 0])).toBeUndefined();
    expect(notHealthy(taken([1, 0, 0, 1]), [1, 0, 0, 0])).toBeUndefined();
    expect(notHealthy(taken([0, 0, 0, 1]), [1, 0, 0, 0])).toBe("a side is missing");
  });

  test("one to both, whose inputs are not set alike", () => {
    const told = matrixOf(taken([0.8, 0, 0, 0]), toBoth, [1, 0, 1, 0]);
    expect(told && rounded(told.gains)).toEqual([1, 0, 0, 0].map((gain) => [gain, 0]));
    expect(notHealthy(toBoth, [1, 0, 1, 0])).toBeUndefined();
    expect(notHealthy(taken([1, 0, 0, 1]), [1, 0, 1, 0])).toBe("a side is missing");
    expect(notHealthy(taken([1, 0, -1, 0]), [1, 0, 1, 0])).toBe("one side is upside down");
    expect(notHealthy(taken([1, 0.5, 1, 0]), [1, 0, 1, 0])).toBe("a side comes over on the other");
  });

  test("a balanced line in a load box: its cold upside down", () => {
    const line = taken([1, 0, -1, 0]);
    expect(notHealthy(line, [1, 0, -1, 0])).toBeUndefined();
    const told = matrixOf(taken([-1, 0, 1, 0]), line, [1, 0, -1, 0]);
    expect(told && rounded(told.gains)).toEqual([-1, 0, 1, 0].map((gain) => [gain, 0]));
  });
});

test("where only one input was heard there is no matrix, and no healthy lead", () => {
  const { channels, rate } = captured([1, 0.5, 0, 0]);
  const measured = measureReturn({ channels: channels.slice(0, 1), rate });
  if ("refused" in measured) throw new Error(measured.refused);
  const one = { measured, level: -50 };
  expect(matrixOf(one, healthy)).toBeUndefined();
  expect(notHealthy(one)).toBe("only one input was heard");
  expect(sideLines(words, shownEntries(one, healthy))).toEqual(["Left: 0.0 dB, as sent."]);
  expect(overLines(words, measured)).toEqual([
    "The right comes over into input 1, 6.0 dB under the left, the same way up.",
  ]);
});

describe("what is said of it", () => {
  test("levels against the healthy one, whatever the output's level was", () => {
    const lead = taken([1, -0.1, 0, -0.5], -41);
    expect(sideLines(words, shownEntries(lead, healthy))).toEqual([
      "Left: 0.0 dB, as sent.",
      "Right: 6.0 dB down, upside down.",
    ]);
    expect(overLines(words, lead.measured)[0]).toBe(
      "The right comes over into input 1, 20.0 dB under the left, upside down.",
    );
    expect(overLines(words, lead.measured)[1]).toMatch(
      /^Nothing of the left in input 2, down to \d+/,
    );
  });

  test("what does not come back", () => {
    expect(sideLines(words, shownEntries(taken([0, 0, 0, 1]), healthy))).toEqual([
      "Left: does not come back.",
      "Right: 0.0 dB, as sent.",
    ]);
  });

  test.each([
    [[1, 0, 0, 1], undefined],
    [[1, 0, 0, 0.5], undefined],
    [[0, 0, 0, 1], "a side is missing"],
    [[0, 1, 1, 0], "a side is missing"],
    [[0.5, -0.5, -0.5, 0.5], "a side comes over on the other"],
    [[1, 0, 0, -1], "one side is upside down"],
  ] as const)("whether %j will do for a healthy one: %s", (wire, why) => {
    expect(notHealthy(taken(wire))).toBe(why);
  });
});
