import { type Complex, zero } from "#core/units/complex.ts";
import type { Hertz } from "#core/units/units.ts";
import { type Circuit, type Element, earth, type Node } from "./circuit.ts";
import { blank, type Equations, eliminate } from "./eliminate.ts";
import { refuseFloating } from "./grounded.ts";

/** The voltage of a node against earth, volts for one volt of the signal. */
export type Voltages = (node: Node) => Complex;

/**
 * Node voltages of a linear circuit at one frequency, one answer for each signal named in `signals`: nodal analysis,
 * complex, by elimination with row pivoting. Throws, with the culprit's name, on a value that no element can have
 * and on a node that nothing ties to earth.
 */
export function solve(circuit: Circuit, at: Hertz, signals: readonly string[]): Voltages[] {
  if (!(Number.isFinite(at) && at >= 0))
    throw new Error(`${at} Hz is no frequency; give a finite one, zero or above`);
  const nodes = numbered(circuit);
  const equations = written(circuit, nodes, at, signals);
  refuseFloating(circuit, at);
  const lost = eliminate(equations);
  if (lost >= 0)
    throw new Error(`node ${[...nodes.keys()][lost]} floats: nothing ties it to earth`);
  return signals.map((_, signal) => (node) => voltage(equations, nodes, node, signal));
}

type Numbers = ReadonlyMap<Node, number>;

function voltage(
  { values, unknowns, rightSides }: Equations,
  nodes: Numbers,
  node: Node,
  signal: number,
): Complex {
  if (node === earth) return zero;
  const row = nodes.get(node);
  if (row === undefined) throw new Error(`no element touches node ${node}`);
  const at = 2 * (row * (unknowns + rightSides) + unknowns + signal);
  return { re: values[at] ?? 0, im: values[at + 1] ?? 0 };
}

function written(
  circuit: Circuit,
  nodes: Numbers,
  at: Hertz,
  signals: readonly string[],
): Equations {
  const equations = blank(nodes.size, signals.length);
  const { values } = equations;
  const width = 2 * (nodes.size + signals.length);
  const put = (row: number, column: number, value: number, part: 0 | 1) => {
    if (row < 0 || column < 0) return;
    const place = row * width + 2 * column + part;
    values[place] = (values[place] ?? 0) + value;
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
  return equations;
}

const driveOf = (element: Element, signal: string): number => {
  const drive = element.kind === "source" ? (element.drive[signal] ?? 0) : 0;
  if (!Number.isFinite(drive)) throw new Error(`${element.name}: ${drive} V is no drive`);
  return drive;
};

/** Every node but earth, in the order they are met. */
function numbered(circuit: Circuit): Numbers {
  const nodes = new Map<Node, number>();
  const meet = (node: Node) => {
    if (node !== earth && !nodes.has(node)) nodes.set(node, nodes.size);
  };
  for (const { a, b } of circuit) {
    meet(a);
    meet(b);
  }
  return nodes;
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
