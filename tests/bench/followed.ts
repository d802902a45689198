import { plan } from "#core/inference/plan.ts";
import type { Problem } from "#core/inference/problem.ts";
import type { Certain } from "./optimum.ts";

/** The same problem in the form that the program's search takes. */
function problemOf({ odds, fine, tests, repairs }: Certain, left = odds): Problem {
  return {
    probabilities: Float64Array.from(left),
    fine,
    tests: tests.map(({ seconds, answer }) => {
      const most = Math.max(...answer) + 1;
      return {
        seconds,
        answers: answer.map((one) =>
          Float64Array.from({ length: most }, (_, at) => Number(at === one)),
        ),
      };
    }),
    repairs: repairs.map(({ seconds, cures }) => ({ seconds, cures: Float64Array.from(cures) })),
  };
}

/**
 * Expected seconds to a rig that works when `plan` is asked anew before every step and its step is taken, over everything that may be
 * found. A repair is made once.
 */
export function followedOf(problem: Certain, fallback: number): number {
  const { fine, tests, repairs } = problem;
  const sum = (left: readonly number[]) => left.reduce((total, one) => total + one, 0);
  const wrong = (left: readonly number[]) => left.map((one, at) => (fine[at] ? 0 : one));
  const used = new Set<number>();
  const from = (left: readonly number[]): number => {
    if (sum(wrong(left)) <= 1e-12) return 0;
    const now: Certain = {
      ...problem,
      repairs: repairs.map((one, at) =>
        used.has(at) ? { ...one, cures: one.cures.map(() => 0) } : one,
      ),
    };
    const { next } = plan(problemOf(now, left), { fallback });
    if (next.step === "done") return sum(wrong(left)) * fallback;
    if (next.step === "test") {
      const { seconds = 0, answer = [] } = tests[next.at] ?? {};
      return [...new Set(answer)].reduce(
        (total, one) => total + from(left.map((p, at) => (answer[at] === one ? p : 0))),
        sum(left) * seconds,
      );
    }
    const { seconds = 0, cures = [] } = repairs[next.at] ?? {};
    used.add(next.at);
    const rest = from(wrong(left).map((p, at) => p * (1 - (cures[at] ?? 0))));
    used.delete(next.at);
    return sum(left) * seconds + rest;
  };
  return from(problem.odds) / sum(problem.odds);
}
