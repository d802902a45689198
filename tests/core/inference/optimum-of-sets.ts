import type { Problem } from "#core/inference/problem.ts";
import { shares } from "./optimum.ts";

/** A set as a number, one bit a hypothesis. */
const bits = (some: readonly boolean[]): number =>
  some.reduce((set, one, at) => (one ? set | (1 << at) : set), 0);

/**
 * The least expected seconds where answers are certain, by dynamic programming over sets of hypotheses and the repairs done that
 * cure in part: every step from every set that can be come to, without bounds.
 */
export function optimumOfSets(problem: Problem, fallback: number): number {
  const { fine, tests, repairs } = problem;
  const weights = shares(problem);
  const cells = tests.map(({ answers }) =>
    Array.from(answers[0] ?? [], (_, answer) => bits(answers.map((one) => one[answer] === 1))),
  );
  const wrong = bits(fine.map((one) => !one));
  const touched = repairs.map(({ cures }) => bits(Array.from(cures, (share) => share > 0)));
  const cured = repairs.map(({ cures }) => bits(Array.from(cures, (share) => share === 1)));
  const inPart = touched.map((set, at) => set !== cured[at]);
  const massOf = (set: number, done: number) =>
    weights.reduce((sum, weight, at) => {
      if ((set & (1 << at)) === 0) return sum;
      const left = repairs.reduce(
        (rest, { cures }, one) => (done & (1 << one) ? rest * (1 - (cures[at] ?? 0)) : rest),
        weight,
      );
      return sum + left;
    }, 0);
  const known = new Map<number, number>();
  const best = (set: number, done: number): number => {
    if (set === 0) return 0;
    const key = done * 2 ** weights.length + set;
    const found = known.get(key) ?? search(set, done);
    known.set(key, found);
    return found;
  };
  const search = (set: number, done: number): number => {
    const mass = massOf(set, done);
    const asking = tests.map(({ seconds }, at) => {
      const after = (cells[at] ?? []).map((cell) => set & cell);
      if (after.includes(set)) return Number.POSITIVE_INFINITY;
      return after.reduce((sum, rest) => sum + best(rest, done), seconds * mass);
    });
    const mending = repairs.map(({ seconds }, at) => {
      const again = (done & (1 << at)) > 0;
      const idle = (set & ((touched[at] ?? 0) | ~wrong)) === 0;
      if (again || idle) return Number.POSITIVE_INFINITY;
      const rest = set & wrong & ~(cured[at] ?? 0);
      return seconds * mass + best(rest, inPart[at] ? done | (1 << at) : done);
    });
    return Math.min(fallback * massOf(set & wrong, done), ...asking, ...mending);
  };
  return best(2 ** weights.length - 1, 0);
}
