import type { Problem } from "#core/inference/problem.ts";
import { type Random, seeded } from "#core/units/random.ts";

/** A whole number from `low` to `high`. */
const between = (random: Random, low: number, high: number): number =>
  low + Math.floor(random() * (high - low + 1));

const listOf = <Item>(length: number, make: (at: number) => Item): Item[] =>
  Array.from({ length }, (_, at) => make(at));

/** One answer for each hypothesis; with slips the rest falls on all answers, each blurred in its own way. */
function answersOf(random: Random, right: readonly number[], kinds: number, slip: number) {
  return right.map((answer) => {
    const blur = listOf(kinds, () => random());
    const all = blur.reduce((sum, one) => sum + one, 0);
    return Float64Array.from(blur, (one, at) =>
      slip === 0 ? Number(at === answer) : (slip * one) / all + (at === answer ? 1 - slip : 0),
    );
  });
}

/** A test that speaks of many, of 6 to 30 s with two to six answers; or a look of 8 to 15 s that singles out one or two. */
function testOf(random: Random, hypotheses: number, slip: number, look: boolean) {
  const kinds = look ? 2 : between(random, 2, 6);
  const seen = [between(random, 0, hypotheses - 1), between(random, 0, hypotheses - 1)];
  const right = listOf(hypotheses, (at) =>
    look ? Number(seen.includes(at)) : between(random, 0, kinds - 1),
  );
  return {
    seconds: look ? between(random, 8, 15) : between(random, 6, 30),
    answers: answersOf(random, right, kinds, slip),
  };
}

/** A repair of 5 to 300 s. It cures one thing, or as a lead or a box does several; some cure by half, as a contact put in again. */
function repairOf(random: Random, hypotheses: number, own: number) {
  const wide = random() < 0.3;
  const share = random() < 0.1 ? 0.5 : 1;
  return {
    seconds: Math.round(5 * 60 ** random()),
    cures: Float64Array.from({ length: hypotheses }, (_, at) =>
      at === own || (wide && random() < 0.3) ? share : 0,
    ),
  };
}

/** How large a problem is, and how often an answer is wrong. */
export interface Size {
  readonly hypotheses: number;
  readonly tests: number;
  readonly looks: number;
  readonly repairs: number;
  readonly slip?: number;
}

/** A problem shaped like a rig's: priors over three decades, and in three of ten nothing may be wrong. */
export function problemOf(seed: number, size: Size): Problem {
  const { hypotheses, tests, looks, repairs, slip = 0 } = size;
  const random = seeded(seed);
  const fine = random() < 0.3 ? between(random, 0, hypotheses - 1) : -1;
  return {
    probabilities: Float64Array.from({ length: hypotheses }, () => 10 ** (-3 * random())),
    fine: listOf(hypotheses, (at) => at === fine),
    tests: listOf(tests + looks, (at) => testOf(random, hypotheses, slip, at >= tests)),
    repairs: listOf(repairs, (own) => repairOf(random, hypotheses, own)),
  };
}

/** A size of four to fifteen hypotheses, of which now and then one has no repair. */
export function sizeOf(seed: number): Size {
  const random = seeded(seed);
  const hypotheses = between(random, 4, 15);
  return {
    hypotheses,
    tests: between(random, 3, 10),
    looks: between(random, 2, 8),
    repairs: between(random, Math.ceil(hypotheses * 0.8), hypotheses),
  };
}

/** Seconds of every kind times a number. */
export const slower = (problem: Problem, by: number): Problem => ({
  ...problem,
  tests: problem.tests.map((test) => ({ ...test, seconds: test.seconds * by })),
  repairs: problem.repairs.map((repair) => ({ ...repair, seconds: repair.seconds * by })),
});

/** The hypotheses in another order: `order` names the old place of each. One named twice is split in two alike. */
export function reordered(problem: Problem, order: readonly number[]): Problem {
  const times = (at: number) => order.filter((one) => one === at).length;
  return {
    probabilities: Float64Array.from(order, (at) => (problem.probabilities[at] ?? 0) / times(at)),
    fine: order.map((at) => problem.fine[at] === true),
    tests: problem.tests.map(({ seconds, answers }) => ({
      seconds,
      answers: order.map((at) => answers[at] ?? new Float64Array()),
    })),
    repairs: problem.repairs.map(({ seconds, cures }) => ({
      seconds,
      cures: Float64Array.from(order, (at) => cures[at] ?? 0),
    })),
  };
}
