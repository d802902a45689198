import { alike, gathered, members, type Rowed } from "./alike.ts";
import type { Problem } from "./problem.ts";
import type { Small } from "./small.ts";
import { toldApart } from "./told-apart.ts";
import { curesMore, tellsMore } from "./useful.ts";

/** What needs no mending is never merged with what does. */
const apart = 1000;

/**
 * Merges hypotheses that all tests and repairs treat alike and answers that tell the same; beyond `hypotheses` and `answers` the
 * lighter join the ones most like them. What is useless, or beaten by something cheaper, is left out.
 */
export function compressed(problem: Problem, hypotheses: number, answers: number): Small {
  const kept = distinct(problem, hypotheses);
  const weights = Float64Array.from(kept, ({ weight }) => weight);
  const column = (row: number, at: number) =>
    Float64Array.from(kept, ({ rows }) => rows[row]?.[at] as number);
  const tests = problem.tests.map(({ seconds }, at) => {
    const count = kept[0]?.rows[at]?.length ?? 0;
    const columns = Array.from({ length: count }, (_, answer) => column(at, answer));
    return { at, seconds, columns: toldApart(columns, weights, answers) };
  });
  const last = problem.tests.length;
  const wrong = column(last, 0).map((fine) => (fine > 0 ? 0 : 1));
  const repairs = problem.repairs.map(({ seconds }, at) => ({
    at,
    seconds,
    cures: column(last, at + 1),
  }));
  return { weights, wrong, tests: tellsMore(tests), repairs: curesMore(repairs) };
}

/** A hypothesis, or several as one. */
interface Weighed {
  readonly weight: number;
  /** Its answers to each test, and last whether it is fine and what cures it. */
  readonly rows: Rowed;
}

/** Those that are treated alike as one, the likeliest first; beyond `most` each joins the one most like it. */
function distinct(problem: Problem, most: number): readonly Weighed[] {
  const likely = Array.from(problem.probabilities.keys()).filter(
    (at) => (problem.probabilities[at] ?? 0) > 0,
  );
  const all = likely.reduce((sum, at) => sum + (problem.probabilities[at] ?? 0), 0);
  const each = likely.map((at) => ({
    weight: (problem.probabilities[at] ?? 0) / all,
    rows: rowsOf(problem, at),
  }));
  const classes = alike(each.map(({ rows }) => rows));
  const sorted = merged(each, classes).toSorted((a, b) => b.weight - a.weight);
  const rows = sorted.map((one) => one.rows);
  const weights = sorted.map(({ weight }) => weight);
  return merged(sorted, gathered(rows, weights, most));
}

function rowsOf({ fine, tests, repairs }: Problem, at: number): Rowed {
  const well = fine[at] === true;
  const cured = repairs.map(({ cures }) => (well ? 1 : (cures[at] ?? 0)));
  return [
    ...tests.map(({ answers }) => answers[at] ?? new Float64Array()),
    Float64Array.of(well ? apart : 0, ...cured),
  ];
}

/** The items of each group as one, their rows in proportion to their weights. */
const merged = (items: readonly Weighed[], groups: Int32Array): readonly Weighed[] =>
  members(groups).map((group) => {
    const some = group.map((at) => items[at] as Weighed);
    const [first] = some as [Weighed];
    if (some.length === 1) return first;
    return {
      weight: some.reduce((sum, { weight }) => sum + weight, 0),
      rows: first.rows.map((_, row) => mean(some, row)),
    };
  });

/** The mean of a row, from the first one on: where all are the same it stays what it was to the last digit. */
function mean(items: readonly Weighed[], row: number): Float64Array {
  const [first] = items as [Weighed];
  const start = first.rows[row] as Float64Array;
  const all = items.reduce((total, { weight }) => total + weight, 0);
  const sum = start.slice();
  for (const { weight, rows } of items)
    for (let at = 0; at < sum.length; at++)
      sum[at] =
        (sum[at] as number) +
        (weight / all) * ((rows[row]?.[at] as number) - (start[at] as number));
  return sum;
}
