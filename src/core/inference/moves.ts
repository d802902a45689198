import { type Layer, setOf } from "./layers.ts";
import type { Step } from "./problem.ts";
import type { Small, SmallRepair } from "./small.ts";

/** A step where answers are certain: it cuts a set of hypotheses into smaller ones. */
export interface Move {
  readonly next: Step;
  readonly seconds: number;
  /** One set of hypotheses for each answer; for a repair the set that may remain. */
  readonly cells: Int32Array;
  /** The bit of a repair that cures in part, or 0. */
  readonly part: number;
  /** What it may cure. */
  readonly touches: number;
}

/** All moves of a problem. */
export function movesOf(
  { tests, repairs }: Small,
  partly: readonly SmallRepair[],
): readonly Move[] {
  const asking = tests.map(({ at, seconds, columns }) => ({
    next: { step: "test", at } as const,
    seconds,
    cells: Int32Array.from(columns, (column) => setOf(column, (p) => p > 0)),
    part: 0,
    touches: 0,
  }));
  const mending = repairs.map((repair) => ({
    next: { step: "repair", at: repair.at } as const,
    seconds: repair.seconds,
    cells: Int32Array.of(setOf(repair.cures, (share) => share < 1)),
    part: partly.includes(repair) ? 1 << partly.indexOf(repair) : 0,
    touches: setOf(repair.cures, (share) => share > 0),
  }));
  return [...asking, ...mending];
}

/** Whether a move does anything to a set. */
export function helps({ cells, part, touches }: Move, { done }: Layer, set: number): boolean {
  if (touches === 0) return cells.every((cell) => (set & cell) !== set);
  return (set & touches) !== 0 && (done & part) === 0;
}
