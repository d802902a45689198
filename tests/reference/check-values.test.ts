import { expect, test } from "vitest";
import { type Circuit, earth, open } from "#core/circuit/circuit.ts";
import { solve } from "#core/circuit/solve.ts";
import { driven, resistor } from "#core/parts/boxes.ts";
import { toDecibels } from "#core/units/decibels.ts";
import type { Ohms } from "#core/units/units.ts";

/** As near to nothing as a resistor may be, beside ohms. */
const wire: Ohms = 1e-7;
const from = (socket: string, contact: "tip" | "ring", ohms: Ohms, bus: string) => ({
  ...driven(socket, contact, ohms, { [bus]: 1 }),
  b: earth,
});

/** Two drivers that share a return. */
const shared = (driver: Ohms, common: Ohms): Circuit => [
  from("out", "tip", wire, "left"),
  from("out", "ring", wire, "right"),
  resistor("left driver", "out.tip", "common", driver),
  resistor("right driver", "out.ring", "common", driver),
  resistor("return", "common", earth, common),
];

const bothDrivers = (circuit: Circuit) =>
  solve(circuit, 0, ["left", "right"]).map((volts) =>
    ["tip", "ring"].map((side) => volts(`out.${side}`).re - volts("common").re),
  );

// Derived from the voltage of the common node: (L+R)/2 when it is open.
test("open common: half of the difference in each driver, in opposite polarity", () => {
  const [[ll, rl] = [], [lr, rr] = []] = bothDrivers(shared(32, open));
  for (const [actual, wanted] of [
    [ll, 0.5],
    [rl, -0.5],
    [lr, -0.5],
    [rr, 0.5],
  ] as const)
    expect(actual).toBeCloseTo(wanted, 6);
});

// Crosstalk ratio of a resistive common: -Rc / (Z + Rc).
test.each([
  [32, 1, -30.37],
  [32, 0.1, -50.13],
  [16, 1, -24.61],
])("%f ohm drivers on a common of %f ohms: crosstalk of %f dB", (driver, common, decibels) => {
  const [[own = 0, other = 0] = []] = bothDrivers(shared(driver, common));
  expect(other / own).toBeLessThan(0);
  expect(toDecibels(-other / own)).toBeCloseTo(decibels, 2);
});

/** The voltage over a load, or several side by side, behind a source of one volt. */
function divided(source: Ohms, ...loads: readonly Ohms[]): number {
  const circuit = [
    from("out", "tip", source, "left"),
    ...loads.map((ohms, index) => resistor(`load ${index}`, "out.tip", earth, ohms)),
  ];
  return solve(circuit, 0, ["left"])[0]?.("out.tip").re ?? Number.NaN;
}

// V = Rload / (Rsource + Rload), in decibels.
test.each([
  ["10 ohms into 32", divided(10, 32), -2.362],
  ["10 ohms into two sets of 32", divided(10, 32, 32), -4.217],
  ["a second set on 10 ohms", divided(10, 32, 32) / divided(10, 32), -1.855],
  ["a second set on 100 ohms", divided(100, 32, 32) / divided(100, 32), -4.898],
  ["a second set on 0.1 ohm", divided(0.1, 32, 32) / divided(0.1, 32), -0.027],
  ["120 ohms, load rising from 300 to 500", divided(120, 500) / divided(120, 300), 1.054],
])("%s: %f dB", (_, ratio, decibels) => {
  expect(toDecibels(ratio)).toBeCloseTo(decibels, 3);
});

// IEC 61938: 5 V rms behind 120 ohms. Milliwatts from P = V² / R.
test.each([
  [32, 1.0526, 34.63],
  [300, 3.5714, 42.52],
  [600, 4.1667, 28.94],
])("5 V behind 120 ohms into %i ohms: %f V, %f mW", (ohms, volts, milliwatts) => {
  const across = 5 * divided(120, ohms);
  expect(across).toBeCloseTo(volts, 4);
  expect((1000 * across ** 2) / ohms).toBeCloseTo(milliwatts, 2);
});
