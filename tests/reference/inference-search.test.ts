import { describe, expect, test } from "vitest";
import { entropy, information } from "#core/inference/information.ts";
import { plan } from "#core/inference/plan.ts";
import type { Problem } from "#core/inference/problem.ts";
import { setsOf } from "#core/inference/sets.ts";
import { followed } from "#tests/core/inference/followed.ts";

/** A question that may be answered yes or no, wrongly with chance `error`. */
const asked = (yes: readonly boolean[], error: number): Float64Array[] =>
  yes.map((one) => Float64Array.of(one ? error : 1 - error, one ? 1 - error : error));

/** Which of several holds, where each has its own cure for nothing, and to stop before costs too much. A question costs 1. */
const which = (p: readonly number[], questions: readonly Float64Array[][]): Problem => ({
  probabilities: Float64Array.from(p),
  fine: p.map(() => false),
  tests: questions.map((answers) => ({ seconds: 1, answers })),
  repairs: p.map((_, own) => ({
    seconds: 1000,
    cures: Float64Array.from(p, (_one, at) => Number(at === own)),
  })),
});
const stop = { fallback: 1e5 };

/**
 * Every subset may be asked: the fewest questions are Huffman's word lengths, and lie between the entropy and one more (Cover and
 * Thomas, Elements of Information Theory). Numbers computed (facts, section 10).
 */
describe.for([
  { p: [0.4, 0.2, 0.2, 0.1, 0.1], bits: 2.1219, questions: 2.2 },
  { p: [0.5, 0.25, 0.125, 0.125], bits: 1.75, questions: 1.75 },
  { p: [1 / 6, 1 / 6, 1 / 6, 1 / 6, 1 / 6, 1 / 6], bits: 2.585, questions: 2.6667 },
  { p: [0.35, 0.2, 0.15, 0.1, 0.1, 0.05, 0.05], bits: 2.5016, questions: 2.55 },
  { p: [0.9, 0.05, 0.05], bits: 0.569, questions: 1.1 },
])("$p: $questions questions", ({ p, bits, questions }) => {
  const places = [...p.keys()];
  /** Half of all subsets: to ask for the others is the same question. */
  const subsets = setsOf(places.slice(1), p.length - 1).slice(1);
  const problem = which(
    p,
    subsets.map((some) =>
      asked(
        places.map((at) => some.includes(at)),
        0,
      ),
    ),
  );

  test("entropy", () => {
    expect(entropy(p)).toBeCloseTo(bits, bits === 2.585 || bits === 0.569 ? 3 : 4);
  });

  test("the planner asks as many as Huffman, between the entropy and one more", () => {
    const found = plan(problem, { ...stop, sets: 20_000 });
    expect(found.exact).toBe(true);
    const asking = found.seconds - 1000;
    expect(asking).toBeCloseTo(questions, 4);
    expect(asking).toBeGreaterThan(entropy(p) - 1e-9);
    expect(asking).toBeLessThan(entropy(p) + 1);
  });

  test("looking ahead, it is never below the entropy nor more than a tenth above Huffman", () => {
    const asking = followed(problem, { ...stop, sets: 0 }) - 1000;
    console.log(`Huffman ${questions}: looking ahead ${asking.toFixed(4)}`);
    expect(asking).toBeGreaterThan(entropy(p) - 1e-9);
    expect(asking).toBeLessThan(questions * 1.1);
  });
});

/** One link of a chain is bad; a probe after a link tells whether it lies before. Computed (facts, section 10). */
describe("probing a chain", () => {
  const probe = (links: number, after: number) =>
    asked(
      Array.from({ length: links }, (_, bad) => bad < after),
      0,
    );
  const gain = (p: readonly number[], after: number) =>
    information(
      probe(p.length, after).map((answers, at) => ({ probability: p[at] ?? 0, answers })),
    );
  const probes = (p: readonly number[]) => p.slice(1).map((_, at) => probe(p.length, at + 1));

  test("four equal links: the middle tells 1 bit, an end 0.8113", () => {
    const equal = [1, 1, 1, 1];
    expect([1, 2, 3].map((after) => gain(equal, after))).toEqual([
      expect.closeTo(0.8113, 4),
      expect.closeTo(1, 9),
      expect.closeTo(0.8113, 4),
    ]);
    expect(plan(which(equal, probes(equal)), stop).next).toEqual({ step: "test", at: 1 });
  });

  test("weights .01, .01, .01, .025: after link 3, 0.9940 bit; after 2, 0.9457", () => {
    const p = [0.01, 0.01, 0.01, 0.025];
    expect(gain(p, 3)).toBeCloseTo(0.994, 4);
    expect(gain(p, 2)).toBeCloseTo(0.9457, 4);
    expect(plan(which(p, probes(p)), stop).next).toEqual({ step: "test", at: 2 });
  });

  test("a chain of eight: three probes", () => {
    const p = Array.from({ length: 8 }, () => 1);
    expect(plan(which(p, probes(p)), stop).seconds - 1000).toBeCloseTo(3, 9);
    expect(followed(which(p, probes(p)), { ...stop, sets: 0 }) - 1000).toBeCloseTo(3, 9);
  });
});
