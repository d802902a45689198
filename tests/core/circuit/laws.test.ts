import fc from "fast-check";
import { expect, test } from "vitest";
import { type Circuit, type Element, earth } from "#core/circuit/circuit.ts";
import { solve } from "#core/circuit/solve.ts";
import { add, scale } from "#core/units/complex.ts";
import {
  apart,
  currentsMiss,
  nodesOf,
  one,
  type Port,
  powerMisses,
  redriven,
  rounding,
  transfers,
  transfersDiffer,
} from "./laws.ts";
import { circuits, frequencies, signals } from "./random-circuit.ts";

/** Of what the strongest element could carry. */
const residue = 1e-12;

test("currents at each node sum to zero", () => {
  fc.assert(
    fc.property(circuits, frequencies, (circuit, at) => {
      expect(currentsMiss(circuit, at, "one")).toBeLessThan(residue);
    }),
  );
});

test("what the sources give is what resistors and capacitors take", () => {
  fc.assert(
    fc.property(circuits, frequencies, (circuit, at) => {
      expect(powerMisses(circuit, at, "one")).toBeLessThan(residue);
    }),
  );
});

test("doubling the source doubles every voltage", () => {
  fc.assert(
    fc.property(circuits, frequencies, (circuit, at) => {
      const twice = redriven(circuit, ({ one: volts = 0 }) => ({ one: 2 * volts }));
      const once = one(circuit, at, "one");
      const miss = apart(twice, "one", [one(twice, at, "one"), (node) => scale(once(node), 2)]);
      expect(miss).toBeLessThan(rounding(circuit, at));
    }),
  );
});

test("two signals at once are the sum of each alone", () => {
  fc.assert(
    fc.property(circuits, frequencies, (circuit, at) => {
      const both = redriven(circuit, ({ one: a = 0, two: b = 0 }) => ({
        both: a + b,
        most: Math.max(Math.abs(a), Math.abs(b)),
      }));
      const [first, second] = solve(circuit, at, signals);
      if (first === undefined || second === undefined) throw new Error("no answer");
      const sum = (node: string) => add(first(node), second(node));
      expect(apart(both, "most", [one(both, at, "both"), sum])).toBeLessThan(rounding(circuit, at));
    }),
  );
});

/** Two nodes of a circuit, earth among them, by numbers. */
const portOf = (circuit: Circuit, at: number, shift: number): Port => {
  const nodes = [earth, ...nodesOf(circuit)];
  const node = (number: number) => nodes[number % nodes.length] ?? earth;
  return [node(at), node(at + 1 + (shift % (nodes.length - 1)))];
};
const places = fc.tuple(fc.nat(), fc.nat());

test("reciprocity: an ampere into one port drives across another what it drives there across the first", () => {
  fc.assert(
    fc.property(circuits, frequencies, places, places, (circuit, at, first, second) => {
      const ports = [portOf(circuit, ...first), portOf(circuit, ...second)] as const;
      expect(transfersDiffer(circuit, at, ports)).toBeLessThan(rounding(circuit, at));
    }),
  );
});

test("a port's own impedance takes power, and never gives any", () => {
  fc.assert(
    fc.property(circuits, frequencies, places, (circuit, at, place) => {
      const port = portOf(circuit, ...place);
      const [own] = transfers(circuit, at, [port, port]);
      expect(own.re).toBeGreaterThan(-rounding(circuit, at) * (1 + Math.abs(own.im)));
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

test("an element that is turned round, or the order they come in, changes nothing", () => {
  fc.assert(
    fc.property(circuits, frequencies, fc.nat(), (circuit, at, by) => {
      const turned = circuit.map((element): Element => {
        const ends = { a: element.b, b: element.a };
        if (element.kind !== "source") return { ...element, ...ends };
        const drive = Object.entries(element.drive).map(([name, volts]) => [name, -volts]);
        return { ...element, ...ends, drive: Object.fromEntries(drive) };
      });
      const cut = by % circuit.length;
      const other = [...turned.slice(cut), ...turned.slice(0, cut)];
      const miss = apart(circuit, "one", [one(circuit, at, "one"), one(other, at, "one")]);
      expect(miss).toBeLessThan(rounding(circuit, at));
    }),
  );
});
