import type { Problem } from "#core/inference/problem.ts";

const sum = (some: ArrayLike<number>): number =>
  Array.from(some).reduce((total, one) => total + one, 0);

/** Weights of all hypotheses that sum to one. */
export const shares = ({ probabilities }: Problem): Float64Array =>
  probabilities.map((one) => one / sum(probabilities));

/** What it costs to stop: the fallback wherever something is wrong. */
export const stopping = (weights: Float64Array, { fine }: Problem, fallback: number): number =>
  fallback * sum(weights.map((weight, at) => (fine[at] === true ? 0 : weight)));

/** What remains after a repair that did not help. Where nothing was wrong, one hears that all is well. */
export const unmended = (weights: Float64Array, problem: Problem, at: number): Float64Array =>
  weights.map((weight, one) =>
    problem.fine[one] === true ? 0 : weight * (1 - (problem.repairs[at]?.cures[one] ?? 0)),
  );

/** What remains of each answer to a test. */
export const answered = (weights: Float64Array, problem: Problem, at: number): Float64Array[] => {
  const answers = problem.tests[at]?.answers ?? [];
  return Array.from({ length: answers[0]?.length ?? 0 }, (_, answer) =>
    weights.map((weight, one) => weight * (answers[one]?.[answer] ?? 0)),
  );
};

/** The belief as weights, the answer to each test or -1, and the repairs done. */
interface Place {
  readonly weights: Float64Array;
  readonly answers: readonly number[];
  readonly done: readonly boolean[];
}

/** The least expected seconds, by trying every step at every belief that can be come to: no bounds, nothing left out. */
export function optimum(problem: Problem, fallback: number): number {
  const known = new Map<string, number>();
  const best = (place: Place): number => {
    const key = `${place.answers}|${place.done}`;
    const found = known.get(key) ?? search(place);
    known.set(key, found);
    return found;
  };
  const search = (place: Place): number =>
    Math.min(
      stopping(place.weights, problem, fallback),
      ...problem.tests.map((_, at) => asking(place, at)),
      ...problem.repairs.map((_, at) => mending(place, at)),
    );
  const asking = ({ weights, answers, done }: Place, at: number): number => {
    if (answers[at] !== -1) return Number.POSITIVE_INFINITY;
    const after = answered(weights, problem, at).map((left, answer) =>
      best({ weights: left, answers: answers.with(at, answer), done }),
    );
    return (problem.tests[at]?.seconds ?? 0) * sum(weights) + sum(after);
  };
  const mending = ({ weights, answers, done }: Place, at: number): number => {
    if (done[at] === true) return Number.POSITIVE_INFINITY;
    const left = unmended(weights, problem, at);
    const after = best({ weights: left, answers, done: done.with(at, true) });
    return (problem.repairs[at]?.seconds ?? 0) * sum(weights) + after;
  };
  return best({
    weights: shares(problem),
    answers: problem.tests.map(() => -1),
    done: problem.repairs.map(() => false),
  });
}
