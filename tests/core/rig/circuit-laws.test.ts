import fc from "fast-check";
import { expect, test } from "vitest";
import { type Circuit, earth } from "#core/circuit/circuit.ts";
import { solve } from "#core/circuit/solve.ts";
import { busesOf, circuitInto } from "#core/rig/circuit-step.ts";
import { joined } from "#core/rig/placed.ts";
import { reachInto } from "#core/rig/reach.ts";
import { rigFaults } from "#core/rig/rig-faults.ts";
import { stretchInto } from "#core/rig/stretch.ts";
import { add, scale } from "#core/units/complex.ts";
import {
  apart,
  currentsMiss,
  nodesOf,
  one,
  type Port,
  powerMisses,
  redriven,
  transfersDiffer,
} from "#tests/core/circuit/laws.ts";
import { frequencies } from "#tests/core/circuit/random-circuit.ts";
import { everyRig } from "#tests/reference/every-rig.ts";
import { takersOf } from "#tests/reference/simulated.ts";
import { someOf } from "./some-faults.ts";

/** A circuit as some rig has it, with up to three of its faults at once, and the signals that drive it. */
interface Real {
  readonly name: string;
  readonly circuit: Circuit;
  readonly signals: readonly string[];
  /** What the part takes in. A floating box's own voltage is rounding's; what lies across an input is not. */
  readonly inputs: readonly Port[];
}

const ways = everyRig.flatMap((rig) => takersOf(rig).map((part) => ({ rig, part })));

const realCircuits: fc.Arbitrary<Real> = fc.constantFrom(...ways).chain(({ rig, part }) =>
  someOf(rigFaults(rig).filter(circuitInto(rig, part).owns)).map((faults) => ({
    name: `${rig.name}, into ${part}: ${faults.map(({ id }) => id).join(" and ")}`,
    circuit: stretchInto(rig, part, faults).circuit,
    signals: busesOf(rig, reachInto(rig, part).from),
    inputs: rig
      .part(part)
      .takes.map(({ plus, minus }) => [joined(part, plus), joined(part, minus)]),
  })),
);

const audible = frequencies.filter((at) => at > 0);
/** Of what the strongest element could carry. */
const residue = 1e-12;
/** Of the largest voltage. */
const rounding = 1e-9;
const check = (within: number, law: (real: Real, at: number) => number) =>
  fc.assert(
    fc.property(realCircuits, audible, (real, at) => {
      expect(law(real, at), real.name).toBeLessThan(within);
    }),
    { numRuns: 300 },
  );
const worst = ({ signals }: Real, law: (signal: string) => number) => Math.max(...signals.map(law));

test("currents at each node sum to zero", () => {
  check(residue, (real, at) => worst(real, (signal) => currentsMiss(real.circuit, at, signal)));
});

test("what the sources give is what resistors and capacitors take", () => {
  check(residue, (real, at) => worst(real, (signal) => powerMisses(real.circuit, at, signal)));
});

test("doubling a signal doubles every voltage", () => {
  check(rounding, ({ circuit, signals: [signal = ""], inputs }, at) => {
    const twice = redriven(circuit, (drive) => ({ [signal]: 2 * (drive[signal] ?? 0) }));
    const once = one(circuit, at, signal);
    const double = (node: string) => scale(once(node), 2);
    return apart(twice, signal, [one(twice, at, signal), double], inputs);
  });
});

test("all signals at once are the sum of each alone", () => {
  check(rounding, ({ circuit, signals, inputs }, at) => {
    const together = redriven(circuit, (drive) => ({
      all: signals.reduce((sum, signal) => sum + (drive[signal] ?? 0), 0),
    }));
    const each = solve(circuit, at, signals);
    const sum = (node: string) => each.map((volts) => volts(node)).reduce(add);
    return apart(together, "all", [one(together, at, "all"), sum], inputs);
  });
});

test("reciprocity between any two contacts", () => {
  fc.assert(
    fc.property(
      realCircuits,
      audible,
      fc.array(fc.nat(), { minLength: 4, maxLength: 4 }),
      (real, at, numbers) => {
        const nodes = nodesOf(real.circuit);
        const [a = "", b = "", c = "", d = ""] = numbers.map(
          (number) => nodes[number % nodes.length],
        );
        const differ = transfersDiffer(real.circuit, at, [
          [a, b],
          [c, d],
        ]);
        expect(differ, real.name).toBeLessThan(rounding);
      },
    ),
    { numRuns: 300 },
  );
});

test("a value that no element can have is refused by the name of the part and the element", () => {
  const bad = fc.constantFrom(0, -1, Number.NaN, Number.POSITIVE_INFINITY);
  fc.assert(
    fc.property(realCircuits, fc.nat(), bad, ({ circuit, signals }, which, value) => {
      const culprit = circuit[which % circuit.length];
      if (culprit === undefined) throw new Error("an empty circuit");
      const spoilt = culprit.kind === "capacitor" ? { farads: value } : { ohms: value };
      const broken = circuit.map((one) => (one === culprit ? { ...one, ...spoilt } : one));
      expect(() => solve(broken, 1000, signals)).toThrow(`${culprit.name}: ${value}`);
    }),
  );
});

test("a rig's circuit without any way to earth is refused by the name of a node", () => {
  fc.assert(
    fc.property(realCircuits, ({ circuit, signals }) => {
      const adrift = circuit.filter(({ a, b }) => a !== earth && b !== earth);
      expect(() => solve(adrift, 1000, signals)).toThrow(/^node .+: .+ floats/);
    }),
  );
});
