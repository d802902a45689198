import fc from "fast-check";
import { expect, test } from "vitest";
import { both, entropy, information } from "#core/inference/information.ts";

const share = fc
  .array(fc.double({ min: 0.01, max: 1, noNaN: true }), { minLength: 3, maxLength: 3 })
  .map((some) => {
    const all = some.reduce((sum, one) => sum + one, 0);
    return Float64Array.from(some, (one) => one / all);
  });

// Four equal links, one bad: a probe in the middle tells one bit (facts, section 10, computed).
test("a probe in the middle of four equal links tells one bit, at the end 0.8113", () => {
  const chain = (after: number) =>
    [0, 1, 2, 3].map((bad) => ({
      probability: 0.25,
      answers: Float64Array.from(bad < after ? [0, 1] : [1, 0]),
    }));
  expect(information(chain(2))).toBeCloseTo(1, 10);
  expect(information(chain(1))).toBeCloseTo(0.8113, 4);
});

// A binary answer with error 0.1 carries 0.5310 bit, with 0.05 0.7136 (facts, section 10, computed).
test.for([
  [0.1, 0.531],
  [0.05, 0.7136],
  [0.2, 0.2781],
] as const)("an answer that errs with chance %s carries %s bit", ([error, bits]) => {
  const prospects = [0, 1].map((truth) => ({
    probability: 0.5,
    answers: Float64Array.from(truth === 0 ? [1 - error, error] : [error, 1 - error]),
  }));
  expect(information(prospects)).toBeCloseTo(bits, 4);
});

test("an answer tells no more than there is to know, nor less than nothing", () => {
  fc.assert(
    fc.property(
      fc.array(fc.tuple(fc.double({ min: 0.01, max: 1, noNaN: true }), share), {
        minLength: 1,
        maxLength: 6,
      }),
      (some) => {
        const prospects = some.map(([probability, answers]) => ({ probability, answers }));
        const all = some.reduce((sum, [p]) => sum + p, 0);
        const bits = information(prospects);
        expect(bits).toBeGreaterThanOrEqual(0);
        expect(bits).toBeLessThanOrEqual(entropy(some.map(([p]) => p / all)) + 1e-9);
      },
    ),
  );
});

test("two questions of which one tells nothing tell as much as the other", () => {
  const sure = [Float64Array.of(1, 0), Float64Array.of(0, 1)];
  const idle = Float64Array.of(0.3, 0.7);
  const prospects = sure.map((answers) => ({ probability: 0.5, answers: both(answers, idle) }));
  expect(information(prospects)).toBeCloseTo(1, 10);
});
