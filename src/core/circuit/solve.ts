import { type Complex, zero } from "#core/units/complex.ts";
import type { Hertz } from "#core/units/units.ts";
import type { Circuit, Element, Node, Source } from "./circuit.ts";
import { blank, type Equations, eliminate } from "./eliminate.ts";
import { refuseFloating } from "./grounded.ts";
import { type Numbered, numbered } from "./numbered.ts";

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
  const numbers = numbered(circuit);
  const equations = written(numbers, at, signals);
  refuseFloating(numbers, at);
  const lost = eliminate(equations);
  if (lost >= 0) throw new Error(`node ${numbers.nodes[lost]} floats: nothing ties it to earth`);
  return signals.map((_, signal) => (node) => voltage(equations, numbers.numberOf(node), signal));
}

function voltage(
  { values, unknowns, rightSides }: Equations,
  row: number,
  signal: number,
): Complex {
  if (row < 0) return zero;
  const at = 2 * (row * (unknowns + rightSides) + unknowns + signal);
  return { re: values[at] ?? 0, im: values[at + 1] ?? 0 };
}

function written(
  { circuit, nodes, ends }: Numbered,
  at: Hertz,
  signals: readonly string[],
): Equations {
  const unknowns = nodes.length;
  const equations = blank(unknowns, signals.length);
  const { values } = equations;
  const width = 2 * (unknowns + signals.length);
  const put = (row: number, column: number, value: number, part: 0 | 1) => {
    if (row < 0 || column < 0) return;
    const place = row * width + 2 * column + part;
    values[place] = (values[place] ?? 0) + value;
  };
  for (const [index, element] of circuit.entries()) {
    const [a, b] = [ends[2 * index] as number, ends[2 * index + 1] as number];
    const [admittance, part] = admittanceOf(element, at);
    put(a, a, admittance, part);
    put(b, b, admittance, part);
    put(a, b, -admittance, part);
    put(b, a, -admittance, part);
    if (element.kind !== "source") continue;
    for (const [place, signal] of signals.entries()) {
      const current = driveOf(element, signal) * admittance;
      put(a, unknowns + place, current, 0);
      put(b, unknowns + place, -current, 0);
    }
  }
  return equations;
}

const driveOf = ({ name, drive }: Source, signal: string): number => {
  const volts = drive[signal] ?? 0;
  if (!Number.isFinite(volts)) throw new Error(`${name}: ${volts} V is no drive`);
  return volts;
};

/** Siemens, and whether they are real (0) or imaginary (1). */
function admittanceOf(element: Element, at: Hertz): readonly [number, 0 | 1] {
  const value = element.kind === "capacitor" ? element.farads : element.ohms;
  if (!(Number.isFinite(value) && value > 0))
    throw new Error(
      `${element.name}: ${value} is no value for a ${element.kind}; give a finite one above zero`,
    );
  return element.kind === "capacitor" ? [2 * Math.PI * at * value, 1] : [1 / value, 0];
}
