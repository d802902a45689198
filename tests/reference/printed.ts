import { expect } from "vitest";
import { size } from "#core/units/complex.ts";
import { toDecibels } from "#core/units/decibels.ts";
import type { Matrix } from "#core/units/matrix.ts";

/** What rounding in the values a table was computed with may add to rounding in print. */
const slack = 0.0006;

/** The real parts of a matrix of two by two, as the handbook's tables have them: L←L, L←R, R←L, R←R. */
export const gains = (matrix: Matrix): number[] => matrix.flat().map(({ re }) => re);

/** The levels of a matrix, decibels, in the same order. */
export const levels = (matrix: Matrix): number[] =>
  matrix.flat().map((gain) => toDecibels(size(gain)));

/** Columns of a matrix by number: those of the two signals that a row of a table is about. */
export const columns = (matrix: Matrix, ...which: readonly number[]): Matrix =>
  matrix.map((row) =>
    which.map((at) => {
      const gain = row[at];
      if (gain === undefined) throw new Error(`a row of ${row.length} gains has no column ${at}`);
      return gain;
    }),
  );

/**
 * Numbers against a row as printed, each to half a unit of its last printed digit. A zero printed alone is as fine as the
 * finest number beside it; a star stands for a cell that the row says nothing of. `beyond` is what is allowed besides.
 */
export function expectPrinted(actual: readonly number[], printed: string, beyond = slack): void {
  const cells = printed.trim().split(/\s+/);
  expect(actual).toHaveLength(cells.length);
  const digits = cells.map((cell) => cell.split(".")[1]?.length ?? 0);
  const finest = Math.max(...digits);
  for (const [at, cell] of cells.entries()) {
    if (cell === "*") continue;
    const places = cell === "0" ? finest : (digits[at] ?? finest);
    const off = Math.abs((actual[at] ?? Number.NaN) - Number(cell));
    expect(off, `cell ${at + 1} is ${actual[at]}, printed ${cell}`).toBeLessThanOrEqual(
      10 ** -places / 2 + beyond,
    );
  }
}
