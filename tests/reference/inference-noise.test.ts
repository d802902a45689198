import { describe, expect, test } from "vitest";
import { entropy, information } from "#core/inference/information.ts";
import { plan } from "#core/inference/plan.ts";
import type { Problem } from "#core/inference/problem.ts";
import { setsOf } from "#core/inference/sets.ts";
import { believe } from "#core/inference/tree.ts";

/** A question answered yes or no, wrongly with chance `error`. */
const asked = (yes: readonly boolean[], error: number): Float64Array[] =>
  yes.map((one) => Float64Array.of(one ? error : 1 - error, one ? 1 - error : error));

/** The most an answer can tell: where yes and no are as likely. The capacity of a binary symmetric channel (Cover and Thomas). */
const capacity = (error: number): number =>
  information(asked([false, true], error).map((answers) => ({ probability: 0.5, answers })));

// Computed (facts, section 10).
test.for([
  [0.01, 0.9192],
  [0.05, 0.7136],
  [0.1, 0.531],
  [0.2, 0.2781],
] as const)("answers wrong with chance %s carry %s bit at most", ([error, bits]) => {
  expect(capacity(error)).toBeCloseTo(bits, 4);
  const uneven = asked([false, true], error);
  expect(information(uneven.map((answers, at) => ({ probability: at + 1, answers })))).toBeLessThan(
    capacity(error),
  );
});

/** Belief in yes after some answers, each wrong with chance 0.1. Computed (facts, section 10). */
test.for([
  [[true, true, true], 0.99863],
  [[true, false, true], 0.9],
] as const)("after %s: %s", ([answers, expected]) => {
  const table = asked([false, true], 0.1);
  const knot = {
    states: [0, 1].map((behaviour) => ({ faults: 0, behaviour, weight: 0.5 })),
    below: [],
    likelihood: (truth: number) =>
      answers.reduce((p, answer) => p * (table[truth]?.[Number(answer)] ?? 0), 1),
  };
  expect(believe(knot, 0, (_, below) => below, 0).states(knot)[1]).toBeCloseTo(expected, 5);
});

/**
 * With q questions and at most e lies a truth may be answered in as many ways as there are sets of at most e questions; all truths
 * together in no more than 2^q (Berlekamp's volume bound, for Ulam's game). A million numbers take 20, 25 and 29 questions with 0, 1
 * and 2 lies (Pelc 1987; Czyzowicz, Mundici and Pelc 1988), which is what the bound says; 33 with 3 is the bound alone.
 */
test.for([
  [0, 20],
  [1, 25],
  [2, 29],
  [3, 33],
] as const)("a million numbers and %s lies: at least %s questions", ([lies, expected]) => {
  const enough = (questions: number) => {
    const all = Array.from({ length: questions }, (_, at) => at);
    return 2 ** questions >= 1e6 * setsOf(all, lies).length;
  };
  const fewest = Array.from({ length: 40 }, (_, at) => at).findIndex(enough);
  expect(fewest).toBe(expected);
});

/** What is left to ask, how likely it is to come here, and what is believed here, in proportion. */
interface Place {
  readonly weights: Float64Array;
  readonly questions: readonly Float64Array[][];
}

/** What a way of asking comes to: the questions it expects to put, and the bits it expects to be told by them. */
function outcome(start: Place, choose: (place: Place) => number): { asked: number; told: number } {
  const mass = (weights: Float64Array) => weights.reduce((sum, p) => sum + p, 0);
  const unknown = (weights: Float64Array) =>
    mass(weights) * entropy(weights.map((p) => p / mass(weights)));
  const go = (place: Place): { asked: number; left: number } => {
    const at = choose(place);
    const question = place.questions[at];
    if (question === undefined) return { asked: 0, left: unknown(place.weights) };
    const questions = place.questions.filter((_, other) => other !== at);
    const ends = [0, 1].map((answer) =>
      go({ questions, weights: place.weights.map((p, h) => p * (question[h]?.[answer] ?? 0)) }),
    );
    return {
      asked: ends.reduce((sum, one) => sum + one.asked, mass(place.weights)),
      left: ends.reduce((sum, one) => sum + one.left, 0),
    };
  };
  const { asked: count, left } = go(start);
  return { asked: count, told: unknown(start.weights) - left };
}

/** The question that tells most, until one hypothesis has nine tenths. */
function mostTelling({ weights, questions }: Place): number {
  const all = weights.reduce((sum, p) => sum + p, 0);
  if (Math.max(...weights) > 0.9 * all) return -1;
  const bits = questions.map((question) =>
    information(question.map((answers, at) => ({ probability: weights[at] ?? 0, answers }))),
  );
  return bits.indexOf(Math.max(...bits));
}

/** The planner's next step, until it is not a question. */
function planned({ weights, questions }: Place): number {
  const problem: Problem = {
    probabilities: weights,
    fine: Array.from(weights, () => false),
    tests: questions.map((answers) => ({ seconds: 10, answers })),
    repairs: Array.from(weights, (_, own) => ({
      seconds: 100,
      cures: Float64Array.from(weights, (_one, at) => Number(at === own)),
    })),
  };
  const { next } = plan(problem);
  return next.step === "test" ? next.at : -1;
}

/** No way of asking is told more bits than the capacity, a question. */
describe.for([0.05, 0.1, 0.2])("four as likely, answers wrong with chance %s", (error) => {
  const halves = [
    [true, true, false, false],
    [true, false, true, false],
    [true, false, false, true],
  ];
  const questions = [0, 1, 2].flatMap(() => halves.map((yes) => asked(yes, error)));
  const start = { weights: Float64Array.of(0.25, 0.25, 0.25, 0.25), questions };

  test.for([
    ["the question that tells most", mostTelling],
    ["the planner", planned],
  ] as const)("%s: never fewer questions than bits over capacity", ([name, choose]) => {
    const { asked: count, told } = outcome(start, choose);
    const fewest = told / capacity(error);
    console.log(`${name}, ${error}: ${count.toFixed(3)} questions, at least ${fewest.toFixed(3)}`);
    expect(told).toBeGreaterThan(0.5);
    expect(count).toBeGreaterThan(fewest * (1 - 1e-9));
    expect(count).toBeLessThan(fewest * 1.5);
  });
});
