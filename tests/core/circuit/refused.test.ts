import fc from "fast-check";
import { expect, test } from "vitest";
import { type Circuit, type Element, earth } from "#core/circuit/circuit.ts";
import { solve } from "#core/circuit/solve.ts";
import { capacitor, resistor } from "#core/parts/boxes.ts";
import { circuits } from "./random-circuit.ts";

const bad = fc.constantFrom(0, -0, -1, Number.NaN, Number.POSITIVE_INFINITY, -1e-12);

const spoilt = (element: Element, value: number): Element =>
  element.kind === "capacitor" ? { ...element, farads: value } : { ...element, ohms: value };

test("a value that no element can have is refused by the element's name", () => {
  fc.assert(
    fc.property(circuits, fc.nat(), bad, (circuit, which, value) => {
      const culprit = circuit[which % circuit.length];
      if (culprit === undefined) return;
      const broken = circuit.map((element) =>
        element === culprit ? spoilt(element, value) : element,
      );
      expect(() => solve(broken, 1000, ["one"])).toThrow(`${culprit.name}: ${value}`);
    }),
  );
});

test("a drive that is no number of volts is refused by the element's name", () => {
  const endless = fc.constantFrom(Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY);
  fc.assert(
    fc.property(circuits, fc.nat(), endless, (circuit, which, volts) => {
      const sources = circuit.filter(({ kind }) => kind === "source");
      const culprit = sources[which % sources.length];
      if (culprit === undefined) throw new Error("a circuit without a source");
      const broken = circuit.map((element) =>
        element === culprit ? { ...element, drive: { one: volts } } : element,
      );
      expect(() => solve(broken, 1000, ["one"])).toThrow(`${culprit.name}: ${volts} V is no drive`);
    }),
  );
});

test.each([-1, Number.NaN, Number.POSITIVE_INFINITY])("%s Hz is refused", (at) => {
  expect(() => solve([resistor("set", "a", earth, 32)], at, ["one"])).toThrow(`${at} Hz`);
});

/** Beside a circuit that is on earth, one that is not. */
const adrift = (at: string, ohms: number): Circuit => [
  resistor("grounded", "grounded", earth, 32),
  resistor("first", `${at} 1`, `${at} 2`, ohms),
  resistor("second", `${at} 2`, `${at} 3`, 1 / 3),
  resistor("third", `${at} 3`, `${at} 1`, ohms / 7),
];

test("what nothing ties to earth is refused by the name of one of its nodes", () => {
  const ohms = fc.double({ min: -2, max: 9, noNaN: true }).map((power) => 10 ** power);
  fc.assert(
    fc.property(ohms, (value) => {
      expect(() => solve(adrift("adrift", value), 1000, ["one"])).toThrow(
        /node adrift \d floats: nothing ties it to earth/,
      );
    }),
  );
});

test("a capacitor ties a node to earth, but not for direct current", () => {
  const circuit = [resistor("set", "a", "b", 32), capacitor("supply", "a", earth, 1e-9)];
  expect(() => solve(circuit, 50, ["one"])).not.toThrow();
  expect(() => solve(circuit, 0, ["one"])).toThrow(/node [ab] floats/);
});

test("the voltage of a node that is not there is refused by its name", () => {
  const [volts] = solve([resistor("set", "a", earth, 32)], 1000, ["one"]);
  expect(volts?.(earth)).toEqual({ re: 0, im: 0 });
  expect(() => volts?.("b")).toThrow("no element touches node b");
});
