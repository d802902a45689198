import { add, type Complex, multiply, zero } from "./complex.ts";

/** Rows of complex gains: `matrix[output][input]`. An ear matrix has two of each, left before right. */
export type Matrix = readonly (readonly Complex[])[];

/** What `first` does, then `then`. Throws where their sizes do not fit, which is a mistake of ours. */
export function chain(then: Matrix, first: Matrix): Matrix {
  return then.map((row) => {
    if (row.length !== first.length)
      throw new Error(`a row of ${row.length} gains cannot take ${first.length} signals`);
    const columns = first[0]?.length ?? 0;
    return Array.from({ length: columns }, (_, column) =>
      row.reduce((sum, gain, at) => add(sum, multiply(gain, first[at]?.[column] ?? zero)), zero),
    );
  });
}
