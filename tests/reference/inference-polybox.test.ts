import { describe, expect, test } from "vitest";
import { entropy, information } from "#core/inference/information.ts";
import { plan } from "#core/inference/plan.ts";
import { setsOf } from "#core/inference/sets.ts";
import { believe } from "#core/inference/tree.ts";

/**
 * The circuit of three multipliers and two adders of de Kleer and Williams, and of Reiter (both Artificial Intelligence 32, 1987):
 * X = A·C, Y = B·D, Z = C·E, F = X + Y, G = Y + Z, with A to E = 3, 2, 2, 3, 3. A good one gives F = G = 12; seen were F = 10,
 * G = 12. A part at fault gives anything.
 */
const parts = ["M1", "M2", "M3", "A1", "A2"] as const;
type Part = (typeof parts)[number];
const [F, G] = [10, 12];

interface Inner {
  readonly X: number;
  readonly Y: number;
  readonly Z: number;
}

const rules: Readonly<Record<Part, (inner: Inner) => boolean>> = {
  M1: ({ X }) => X === 6,
  M2: ({ Y }) => Y === 6,
  M3: ({ Z }) => Z === 6,
  A1: ({ X, Y }) => X + Y === F,
  A2: ({ Y, Z }) => Y + Z === G,
};

const values = Array.from({ length: G + 1 }, (_, value) => value);
const all: readonly Inner[] = values.flatMap((X) =>
  values.flatMap((Y) => values.map((Z) => ({ X, Y, Z }))),
);

/** The inner values that every part not at fault agrees with, out of all there may be. */
const inside = (faults: readonly Part[]): readonly Inner[] =>
  all.filter((inner) => parts.every((part) => faults.includes(part) || rules[part](inner)));

const sets = setsOf(parts, 5);
const diagnoses = sets.filter((faults) => inside(faults).length > 0);
const minimal = diagnoses.filter(
  (set) =>
    !diagnoses.some(
      (other) => other.length < set.length && other.every((one) => set.includes(one)),
    ),
);

// Reiter's and de Kleer and Williams's conflicts give these; the count computed (facts, section 10).
test("32 sets of faults, 27 of them explain what was seen, four are minimal", () => {
  expect(sets.length).toBe(32);
  expect(diagnoses.length).toBe(27);
  expect(minimal).toEqual([["M1"], ["A1"], ["M2", "M3"], ["M2", "A2"]]);
});

test("with at most two faults: every minimal diagnosis is among the sets", () => {
  const few = setsOf(parts, 2);
  expect(few.filter((set) => minimal.some((one) => String(one) === String(set)))).toEqual(minimal);
});

/** Computed (facts, section 10): each part is at fault with one chance in a hundred. */
const odds = 0.01 / 0.99;

describe("all diagnoses, as a tree of one knot", () => {
  const knot = {
    states: sets.map((faults, behaviour) => ({
      faults: 0,
      behaviour,
      weight: odds ** faults.length,
    })),
    below: [],
    likelihood: (which: number) => Math.min(1, inside(sets[which] ?? []).length),
  };
  const states = believe(knot, 0, (_, below) => below, 0).states(knot);
  const p = (part: Part) =>
    sets.reduce((sum, set, at) => (set.includes(part) ? sum + (states[at] ?? 0) : sum), 0);

  test("M1 and A1 0.497635, M2 0.019609, M3 and A2 0.014780", () => {
    expect(p("M1")).toBeCloseTo(0.497635, 6);
    expect(p("A1")).toBeCloseTo(0.497635, 6);
    expect(p("M2")).toBeCloseTo(0.019609, 6);
    expect(p("M3")).toBeCloseTo(0.01478, 6);
    expect(p("A2")).toBeCloseTo(0.01478, 6);
  });
});

describe("the four minimal diagnoses", () => {
  const knot = {
    states: minimal.map((faults, behaviour) => ({
      faults: 0,
      behaviour,
      weight: odds ** faults.length,
    })),
    below: [],
  };
  const probabilities = believe(knot, 0, (_, below) => below, 0).states(knot);

  test("0.4950, 0.4950, 0.0050, 0.0050: 1.080793 bit", () => {
    for (const [at, expected] of [0.495, 0.495, 0.005, 0.005].entries())
      expect(probabilities[at]).toBeCloseTo(expected, 6);
    expect(entropy(probabilities)).toBeCloseTo(1.080793, 6);
  });

  /** A probe reads one product, which under each of the four is told by the parts that are good. */
  const probe = (name: keyof Inner) =>
    minimal.map((faults) => {
      const told = inside(faults).map((inner) => inner[name]);
      expect(new Set(told).size).toBe(1);
      return Float64Array.from(values, (value) => Number(told[0] === value));
    });
  const gain = (name: keyof Inner) =>
    information(
      probe(name).map((answers, at) => ({ probability: probabilities[at] ?? 0, answers })),
    );

  test("a probe at X tells 0.999928 bit, Y 0.080793, Z 0.045415: X first", () => {
    expect(gain("X")).toBeCloseTo(0.999928, 6);
    expect(gain("Y")).toBeCloseTo(0.080793, 6);
    expect(gain("Z")).toBeCloseTo(0.045415, 6);
    expect(entropy(probabilities) - gain("X")).toBeCloseTo(0.080865, 6);
  });

  test("the planner probes X first as well, where a probe costs a tenth of a repair", () => {
    const names = ["Z", "Y", "X"] as const;
    const { next } = plan({
      probabilities,
      fine: minimal.map(() => false),
      tests: names.map((name) => ({ seconds: 10, answers: probe(name) })),
      repairs: minimal.map((_, own) => ({
        seconds: 100,
        cures: Float64Array.from(minimal, (_one, at) => Number(at === own)),
      })),
    });
    expect(next).toEqual({ step: "test", at: names.indexOf("X") });
  });
});
