/**
 * Linear equations in complex numbers, row after row in one array: coefficients first, then right-hand sides; each number is its real and
 * its imaginary part.
 */
export interface Equations {
  readonly values: Float64Array;
  /** How many unknowns, and so rows. */
  readonly unknowns: number;
  readonly rightSides: number;
}

export const blank = (unknowns: number, rightSides: number): Equations => ({
  values: new Float64Array(2 * unknowns * (unknowns + rightSides)),
  unknowns,
  rightSides,
});

/** Smaller than this a pivot is rounding: nothing determines its unknown. */
const nothing = 1e-15;

/**
 * Solves in place, by elimination with row pivoting and back substitution: afterwards the right-hand sides are the answers, in the order of
 * the unknowns. Returns the first unknown that nothing determines, or -1.
 */
export function eliminate(equations: Equations): number {
  const { unknowns } = equations;
  for (let column = 0; column < unknowns; column++) {
    const pivot = largest(equations, column);
    if (magnitude(equations, pivot, column) < nothing) return column;
    if (pivot !== column) exchange(equations, pivot, column);
    for (let row = column + 1; row < unknowns; row++) subtract(equations, row, column);
  }
  for (let column = unknowns - 1; column >= 0; column--) substitute(equations, column);
  return -1;
}

const widthOf = ({ unknowns, rightSides }: Equations): number => 2 * (unknowns + rightSides);

function magnitude(equations: Equations, row: number, column: number): number {
  const at = row * widthOf(equations) + 2 * column;
  const { values } = equations;
  return Math.abs(values[at] as number) + Math.abs(values[at + 1] as number);
}

function largest(equations: Equations, column: number): number {
  let best = column;
  let most = magnitude(equations, column, column);
  for (let row = column + 1; row < equations.unknowns; row++) {
    const here = magnitude(equations, row, column);
    if (here > most) {
      best = row;
      most = here;
    }
  }
  return best;
}

function exchange(equations: Equations, one: number, other: number): void {
  const { values } = equations;
  const width = widthOf(equations);
  for (let at = 0; at < width; at++) {
    const kept = values[one * width + at] as number;
    values[one * width + at] = values[other * width + at] as number;
    values[other * width + at] = kept;
  }
}

/** Takes from a row as much of the pivot's row as clears its entry in the pivot's column. */
function subtract(equations: Equations, row: number, column: number): void {
  const { values } = equations;
  const width = widthOf(equations);
  const [own, pivot] = [row * width, column * width];
  const at = 2 * column;
  const [re, im] = [values[own + at] as number, values[own + at + 1] as number];
  if (re === 0 && im === 0) return;
  const [x, y] = [values[pivot + at] as number, values[pivot + at + 1] as number];
  const square = x * x + y * y;
  const [byRe, byIm] = [(re * x + im * y) / square, (im * x - re * y) / square];
  for (let place = at; place < width; place += 2) {
    const a = values[pivot + place] as number;
    const b = values[pivot + place + 1] as number;
    if (a === 0 && b === 0) continue;
    values[own + place] = (values[own + place] as number) - (byRe * a - byIm * b);
    values[own + place + 1] = (values[own + place + 1] as number) - (byRe * b + byIm * a);
  }
}

/** The answers of one unknown, once those after it are known. */
function substitute(equations: Equations, column: number): void {
  const { values, unknowns } = equations;
  const width = widthOf(equations);
  const own = column * width;
  const [x, y] = [values[own + 2 * column] as number, values[own + 2 * column + 1] as number];
  const square = x * x + y * y;
  for (let side = 2 * unknowns; side < width; side += 2) {
    let re = values[own + side] as number;
    let im = values[own + side + 1] as number;
    for (let later = column + 1; later < unknowns; later++) {
      const a = values[own + 2 * later] as number;
      const b = values[own + 2 * later + 1] as number;
      if (a === 0 && b === 0) continue;
      const u = values[later * width + side] as number;
      const v = values[later * width + side + 1] as number;
      re -= a * u - b * v;
      im -= a * v + b * u;
    }
    values[own + side] = (re * x + im * y) / square;
    values[own + side + 1] = (im * x - re * y) / square;
  }
}
