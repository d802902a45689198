import {
  type Circuit,
  type Element,
  earth,
  type Node,
  type Source,
} from "#core/circuit/circuit.ts";
import { solve, type Voltages } from "#core/circuit/solve.ts";
import {
  add,
  type Complex,
  multiply,
  real,
  scale,
  size,
  subtract,
  zero,
} from "#core/units/complex.ts";
import type { Hertz } from "#core/units/units.ts";

/** Every node but earth. */
export const nodesOf = (circuit: Circuit): readonly Node[] => [
  ...new Set(circuit.flatMap(({ a, b }) => [a, b]).filter((node) => node !== earth)),
];

const admittance = (element: Element, at: Hertz): Complex =>
  element.kind === "capacitor"
    ? { re: 0, im: 2 * Math.PI * at * element.farads }
    : real(1 / element.ohms);

const driveOf = (element: Element, signal: string): number =>
  element.kind === "source" ? (element.drive[signal] ?? 0) : 0;

/** The current that leaves node a through an element. */
function current(element: Element, at: Hertz, signal: string, volts: Voltages): Complex {
  const across = subtract(volts(element.a), volts(element.b));
  return multiply(admittance(element, at), subtract(across, real(driveOf(element, signal))));
}

/** The answer to one signal. */
export function one(circuit: Circuit, at: Hertz, signal: string): Voltages {
  const [volts] = solve(circuit, at, [signal]);
  if (volts === undefined) throw new Error("no answer");
  return volts;
}

/** The largest voltage or drive of a circuit: rounding is measured against it. */
const largest = (circuit: Circuit, signal: string, volts: Voltages): number =>
  Math.max(
    ...nodesOf(circuit).map((node) => size(volts(node))),
    ...circuit.map((element) => Math.abs(driveOf(element, signal))),
    1e-30,
  );

/** What the strongest element could carry and take: elimination with pivots is good to a few digits of rounding of it, not of each node's own. */
const strongest = (circuit: Circuit, at: Hertz): number =>
  Math.max(...circuit.map((element) => size(admittance(element, at))));

/**
 * What rounding may do to a voltage, against the largest: sixteen digits, less those between the strongest element and the weakest. Two nodes
 * tied by a contact and to earth by an open have their difference exactly, and their height to a few digits.
 */
export function rounding(circuit: Circuit, at: Hertz): number {
  const sizes = circuit.map((element) => size(admittance(element, at))).filter((one) => one > 0);
  return 1e-12 + (1e-15 * strongest(circuit, at)) / Math.min(...sizes);
}

/** By how much the currents at the worst node miss zero, against what the strongest element could carry. */
export function currentsMiss(circuit: Circuit, at: Hertz, signal: string): number {
  const volts = one(circuit, at, signal);
  const sums = nodesOf(circuit).map((node) => {
    const touching = circuit.filter(({ a, b }) => (a === node) !== (b === node));
    return touching
      .map((element) => scale(current(element, at, signal, volts), element.a === node ? 1 : -1))
      .reduce(add, zero);
  });
  return Math.max(...sums.map(size)) / (strongest(circuit, at) * largest(circuit, signal, volts));
}

const conjugate = ({ re, im }: Complex): Complex => ({ re, im: -im });

/**
 * What the sources give, against what resistors and capacitors take, complex watts: by how much they differ, against what the strongest
 * element could take.
 */
export function powerMisses(circuit: Circuit, at: Hertz, signal: string): number {
  const volts = one(circuit, at, signal);
  const balance = circuit.map((element) => {
    const amperes = conjugate(current(element, at, signal, volts));
    const given = multiply(real(driveOf(element, signal)), scale(amperes, -1));
    const inside = add(
      subtract(volts(element.a), volts(element.b)),
      real(-driveOf(element, signal)),
    );
    return subtract(given, multiply(inside, amperes));
  });
  const most = strongest(circuit, at) * largest(circuit, signal, volts) ** 2;
  return size(balance.reduce(add, zero)) / most;
}

/** The same circuit with each source's drive made of what it was. */
export const redriven = (
  circuit: Circuit,
  make: (drive: Readonly<Record<string, number>>) => Readonly<Record<string, number>>,
): Circuit =>
  circuit.map((element) =>
    element.kind === "source" ? { ...element, drive: make(element.drive) } : element,
  );

/** Two nodes, and what flows in at one and out at the other. */
export type Port = readonly [into: Node, from: Node];

/** Every node against earth. */
const fromEarth = (circuit: Circuit): readonly Port[] =>
  nodesOf(circuit).map((node) => [node, earth]);

/** How far two answers of one circuit are apart between some nodes, against the largest voltage of the first. */
export function apart(
  circuit: Circuit,
  signal: string,
  [a, b]: readonly [Voltages, Voltages],
  ports: readonly Port[] = fromEarth(circuit),
): number {
  const most = largest(circuit, signal, a);
  const across = (volts: Voltages, [from, to]: Port) => subtract(volts(from), volts(to));
  return Math.max(...ports.map((port) => size(subtract(across(a, port), across(b, port))) / most));
}

/** Of the source that stands for a current: it takes nothing that tells. */
const aside = 1e9;

const feeding = (name: string, [a, b]: Port): Source => ({
  kind: "source",
  name,
  a,
  b,
  ohms: aside,
  drive: { [name]: aside },
});

/** Volts across one port for an ampere into another, and the other way round, with all sources of the circuit at rest. */
export function transfers(
  circuit: Circuit,
  at: Hertz,
  [one, other]: readonly [Port, Port],
): readonly [Complex, Complex] {
  const fed = [...redriven(circuit, () => ({})), feeding("one", one), feeding("other", other)];
  const [fromOne, fromOther] = solve(fed, at, ["one", "other"]);
  if (fromOne === undefined || fromOther === undefined) throw new Error("no answer");
  const across = (volts: Voltages, [a, b]: Port) => subtract(volts(a), volts(b));
  return [across(fromOne, other), across(fromOther, one)];
}

/** By how much transfer impedances the two ways differ, against the impedances of the ports themselves. */
export function transfersDiffer(circuit: Circuit, at: Hertz, ports: readonly [Port, Port]): number {
  const [there, back] = transfers(circuit, at, ports);
  const [[own], [other]] = ports.map((port) => transfers(circuit, at, [port, port])) as [
    readonly [Complex, Complex],
    readonly [Complex, Complex],
  ];
  return size(subtract(there, back)) / Math.max(size(own), size(other), 1e-30);
}
