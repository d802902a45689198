import fc from "fast-check";
import { expect, test } from "vitest";
import { type Circuit, type Element, earth } from "#core/circuit/circuit.ts";
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
import { circuits, frequencies, signals } from "./random-circuit.ts";

const nodesOf = (circuit: Circuit) => [
  ...new Set(circuit.flatMap(({ a, b }) => [a, b]).filter((node) => node !== earth)),
];

const admittance = (element: Element, at: number): Complex =>
  element.kind === "capacitor"
    ? { re: 0, im: 2 * Math.PI * at * element.farads }
    : real(1 / element.ohms);

/** The current that leaves node a through an element. */
function current(element: Element, at: number, signal: string, volts: Voltages): Complex {
  const across = subtract(volts(element.a), volts(element.b));
  const driven = element.kind === "source" ? (element.drive[signal] ?? 0) : 0;
  return multiply(admittance(element, at), subtract(across, real(driven)));
}

const one = (circuit: Circuit, at: number, signal: string): Voltages => {
  const [volts] = solve(circuit, at, [signal]);
  if (volts === undefined) throw new Error("no answer");
  return volts;
};

/** The largest voltage of a circuit: rounding is measured against it. */
const largest = (circuit: Circuit, volts: Voltages) =>
  Math.max(...nodesOf(circuit).map((node) => size(volts(node))), 1e-30);

test("currents at each node sum to zero", () => {
  fc.assert(
    fc.property(circuits, frequencies, (circuit, at) => {
      const volts = one(circuit, at, "one");
      for (const node of nodesOf(circuit)) {
        const touching = circuit.filter(({ a, b }) => (a === node) !== (b === node));
        const sum = touching
          .map((element) => scale(current(element, at, "one", volts), element.a === node ? 1 : -1))
          .reduce(add, zero);
        const strongest = Math.max(...touching.map((element) => size(admittance(element, at))));
        const scaleOf = strongest * (10 + largest(circuit, volts));
        expect(size(sum) / scaleOf).toBeLessThan(1e-9);
      }
    }),
  );
});

/** The same circuit with each source's drive made of what it was. */
const redriven = (
  circuit: Circuit,
  make: (drive: Readonly<Record<string, number>>) => Record<string, number>,
): Circuit =>
  circuit.map((element) =>
    element.kind === "source" ? { ...element, drive: make(element.drive) } : element,
  );

const expectSame = (circuit: Circuit, a: Voltages, b: (node: string) => Complex) => {
  const beside = 10 + largest(circuit, a);
  for (const node of nodesOf(circuit))
    expect(size(subtract(a(node), b(node))) / beside).toBeLessThan(1e-9);
};

test("doubling the source doubles every voltage", () => {
  fc.assert(
    fc.property(circuits, frequencies, (circuit, at) => {
      const twice = redriven(circuit, ({ one: volts = 0 }) => ({ one: 2 * volts }));
      const once = one(circuit, at, "one");
      expectSame(circuit, one(twice, at, "one"), (node) => scale(once(node), 2));
    }),
  );
});

test("two signals at once are the sum of each alone", () => {
  fc.assert(
    fc.property(circuits, frequencies, (circuit, at) => {
      const together = redriven(circuit, ({ one: a = 0, two: b = 0 }) => ({ both: a + b }));
      const [first, second] = solve(circuit, at, signals);
      if (first === undefined || second === undefined) throw new Error("no answer");
      expectSame(circuit, one(together, at, "both"), (node) => add(first(node), second(node)));
    }),
  );
});

test("reciprocity: a volt in one branch drives through another what a volt there drives through the first", () => {
  fc.assert(
    fc.property(circuits, frequencies, fc.nat(), fc.nat(), (circuit, at, first, second) => {
      const branches = circuit.filter(({ kind }) => kind !== "capacitor");
      const [p, q] = [branches[first % branches.length], branches[second % branches.length]];
      if (p === undefined || q === undefined || p === q) return;
      const driven = circuit.map((element): Element => {
        if (element.kind === "capacitor") return element;
        const drive = { p: element === p ? 1 : 0, q: element === q ? 1 : 0 };
        return { ...element, kind: "source", drive };
      });
      const [fromP, fromQ] = solve(driven, at, ["p", "q"]);
      if (fromP === undefined || fromQ === undefined) throw new Error("no answer");
      const across = (element: Element, volts: Voltages) =>
        multiply(admittance(element, at), subtract(volts(element.a), volts(element.b)));
      const there = across(q, fromP);
      const back = across(p, fromQ);
      const beside = Math.max(size(admittance(p, at)), size(admittance(q, at)));
      expect(size(subtract(there, back)) / beside).toBeLessThan(1e-9);
    }),
  );
});

test("solving leaves the circuit as it was, and the same circuit gives the same voltages", () => {
  fc.assert(
    fc.property(circuits, frequencies, (circuit, at) => {
      const before = structuredClone(circuit);
      const volts = one(circuit, at, "one");
      expect(circuit).toEqual(before);
      const again = one(before, at, "one");
      for (const node of nodesOf(circuit)) expect(again(node)).toEqual(volts(node));
    }),
  );
});
