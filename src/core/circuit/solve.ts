import { type Complex, zero } from "#core/units/complex.ts";
import type { Hertz } from "#core/units/units.ts";
import { type Circuit, type Element, earth, type Node } from "./circuit.ts";
import { refuseFloating } from "./grounded.ts";

/** The voltage of a node against earth, volts for one volt of the signal. */
export type Voltages = (node: Node) => Complex;

/** The equations of a circuit: admittance matrix with one right-hand side a signal, in rows of alternating real and imaginary parts. */
interface Equations {
  readonly nodes: ReadonlyMap<Node, number>;
  readonly rows: readonly Float64Array[];
}

/**
 * Node voltages of a linear circuit at one frequency, one answer for each signal named in `signals`: nodal analysis,
 * complex, by elimination with row pivoting. Throws, with the culprit's name, on a value that no element can have and on a node
 * that nothing ties to earth.
 */
export function solve(circuit: Circuit, at: Hertz, signals: readonly string[]): Voltages[] {
  const equations = write(circuit, at, signals);
  refuseFloating(circuit, at);
  eliminate(equations);
  return signals.map((_, signal) => (node) => voltage(equations, node, signal));
}

function voltage({ nodes, rows }: Equations, node: Node, signal: number): Complex {
  if (node === earth) return zero;
  const row = rows[nodes.get(node) ?? rows.length];
  if (row === undefined) throw new Error(`no element touches node ${node}`);
  const column = 2 * (rows.length + signal);
  return { re: row[column] ?? 0, im: row[column + 1] ?? 0 };
}

function write(circuit: Circuit, at: Hertz, signals: readonly string[]): Equations {
  const nodes = numbered(circuit);
  const width = 2 * (nodes.size + signals.length);
  const rows = Array.from({ length: nodes.size }, () => new Float64Array(width));
  const put = (row: number, column: number, value: number, part: 0 | 1) => {
    const line = rows[row];
    if (line === undefined || column < 0) return;
    line[2 * column + part] = (line[2 * column + part] ?? 0) + value;
  };
  for (const element of circuit) {
    const [a, b] = [nodes.get(element.a) ?? -1, nodes.get(element.b) ?? -1];
    const [admittance, part] = admittanceOf(element, at);
    put(a, a, admittance, part);
    put(b, b, admittance, part);
    put(a, b, -admittance, part);
    put(b, a, -admittance, part);
    for (const [index, signal] of signals.entries()) {
      const current = driveOf(element, signal) * admittance;
      put(a, nodes.size + index, current, 0);
      put(b, nodes.size + index, -current, 0);
    }
  }
  return { nodes, rows };
}

const driveOf = (element: Element, signal: string): number =>
  element.kind === "source" ? (element.drive[signal] ?? 0) : 0;

/** Every node but earth, in the order they are met. */
function numbered(circuit: Circuit): ReadonlyMap<Node, number> {
  const names = new Set(circuit.flatMap(({ a, b }) => [a, b]));
  names.delete(earth);
  return new Map([...names].map((name, at) => [name, at]));
}

/** Siemens, and whether they are real (0) or imaginary (1). */
function admittanceOf(element: Element, at: Hertz): readonly [number, 0 | 1] {
  const value = element.kind === "capacitor" ? element.farads : element.ohms;
  if (!(Number.isFinite(value) && value > 0))
    throw new Error(
      `${element.name}: ${value} is no value for a ${element.kind}; give a finite one above zero`,
    );
  return element.kind === "capacitor" ? [2 * Math.PI * at * value, 1] : [1 / value, 0];
}

/** Gauss and Jordan, in place: afterwards the right-hand sides are the voltages. */
function eliminate({ nodes, rows: fixed }: Equations): void {
  const rows = fixed as Float64Array[];
  const names = [...nodes.keys()];
  for (let column = 0; column < rows.length; column++) {
    const pivot = largest(rows, column);
    const line = rows[pivot];
    if (line === undefined || magnitude(line, column) < 1e-15)
      throw new Error(`node ${names[column]} floats: nothing ties it to earth`);
    rows[pivot] = rows[column] as Float64Array;
    rows[column] = line;
    normalise(line, column);
    for (const [index, row] of rows.entries()) if (index !== column) subtractRow(row, line, column);
  }
}

const magnitude = (row: Float64Array, column: number): number =>
  Math.abs(row[2 * column] ?? 0) + Math.abs(row[2 * column + 1] ?? 0);

function largest(rows: readonly Float64Array[], column: number): number {
  let best = column;
  for (let index = column + 1; index < rows.length; index++)
    if (
      magnitude(rows[index] as Float64Array, column) > magnitude(rows[best] as Float64Array, column)
    )
      best = index;
  return best;
}

/** Divides a row by its entry in `column`. */
function normalise(row: Float64Array, column: number): void {
  const re = row[2 * column] as number;
  const im = row[2 * column + 1] as number;
  const square = re * re + im * im;
  for (let at = 2 * column; at < row.length; at += 2) {
    const [x, y] = [row[at] as number, row[at + 1] as number];
    row[at] = (x * re + y * im) / square;
    row[at + 1] = (y * re - x * im) / square;
  }
}

/** Takes from `row` as much of `line` as clears its entry in `column`. */
function subtractRow(row: Float64Array, line: Float64Array, column: number): void {
  const re = row[2 * column] as number;
  const im = row[2 * column + 1] as number;
  if (re === 0 && im === 0) return;
  for (let at = 2 * column; at < row.length; at += 2) {
    const [x, y] = [line[at] as number, line[at + 1] as number];
    row[at] = (row[at] as number) - (re * x - im * y);
    row[at + 1] = (row[at + 1] as number) - (re * y + im * x);
  }
}
