import { describe, expect, test } from "vitest";
import { type Circuit, type Element, earth } from "#core/circuit/circuit.ts";
import { solve } from "#core/circuit/solve.ts";
import { hum, resistor } from "#core/parts/boxes.ts";
import { solved } from "#core/rig/circuit-step.ts";
import { stretchInto } from "#core/rig/stretch.ts";
import { add, size, subtract, zero } from "#core/units/complex.ts";
import { toDecibels } from "#core/units/decibels.ts";
import type { Matrix } from "#core/units/matrix.ts";
import type { Farads, Hertz } from "#core/units/units.ts";
import { both, changedRig, faultOf, onEarthBy, withOhms } from "./changed-rig.ts";
import { expectPrinted, gains, levels } from "./printed.ts";
import { battery, laptopIntoAmplifier, plugTop } from "./small-rigs.ts";

/** A box on a mains lead: 'chassis 0.02 ohm', handbook, section 5. */
const earthed = resistor("mains earth", "chassis", earth, 0.02);
const lineOut = withOhms({ "phones tip": 22, "phones ring": 22 });

/** 22 ohms out, a stereo lead of 3 m, 10 kilohms in, each box on earth in its own way. */
const line = (source: Element | Circuit, amplifier: Element | Circuit) =>
  changedRig(laptopIntoAmplifier, {
    laptop: both(lineOut, onEarthBy(source)),
    amplifier: onEarthBy(amplifier),
  });
type Line = ReturnType<typeof line>;

const withFault = (rig: Line, name: string, at?: Hertz) =>
  solved(rig, "amplifier", [faultOf(rig, `lead / body / ${name}`)], at);

/** Handbook, section 5, 'the same faults on a line cable' (C): computed by nodal analysis in a SPICE simulator. */
describe("a line cable", () => {
  test.each([
    ["tip and ring shorted", "both earthed", line(earthed, earthed), ".500 .498 .498 .500"],
    ["sleeve open", "both earthed: stereo stays", line(earthed, earthed), ".998 0 0 .998"],
    ["sleeve open", "both on battery", line(battery, battery), ".499 -.499 -.499 .499"],
    ["tip and sleeve exchanged", "earthed", line(earthed, earthed), "0.00 0.00 0.00 +.998"],
    ["tip and sleeve exchanged", "floating", line(earthed, plugTop), "-.996 0.00 -.993 +.996"],
  ])("%s, %s", (name, _, rig, printed) => {
    expectPrinted(gains(withFault(rig, name)), printed);
  });

  test.each([
    [100, "-50"],
    [1000, "-30"],
    [10_000, "-10"],
  ])("sleeve open, one box on 1 nF: the middle at %i Hz is at %s dB", (at, printed) => {
    const matrix = withFault(line(earthed, plugTop), "sleeve open", at);
    expectPrinted([toDecibels(middle(matrix))], printed);
  });

  test.each([
    [1000, "-34"],
    [10_000, "-15"],
  ])("an open conductor bleeds from its neighbour, at %i Hz %s dB", (at, printed) => {
    const [, bled = 0, , own = 0] = levels(withFault(line(earthed, earthed), "tip open", at));
    expectPrinted([bled - own], printed);
  });
});

/** The size of what is in both sides, at the left input. */
function middle(matrix: Matrix): number {
  const [left = zero, right = zero] = matrix[0] ?? [];
  return size(add(left, right));
}

/**
 * Hum where the return is lost: half of 230 V behind the capacitance of the supply reproduces all three figures; the handbook
 * (section 5 (C)) names neither the voltage nor the frequency.
 */
describe("hum of a lost sleeve, one box floating", () => {
  const humming = (farads: Farads): Circuit => {
    const rig = line(earthed, plugTop);
    const fault = faultOf(rig, "lead / body / sleeve open");
    return stretchInto(rig, "amplifier", [fault]).circuit.map((element) =>
      element.kind === "capacitor" && element.name === "amplifier: supply"
        ? { ...element, farads }
        : element,
    );
  };

  test.each([
    [0.47e-9, "0.085"],
    [1e-9, "0.181"],
    [2.2e-9, "0.397"],
  ])("%f F: %s V in both sides", (farads, printed) => {
    const [volts] = solve(humming(farads), 50, [hum]);
    if (volts === undefined) throw new Error("no answer");
    const sides = (["tip", "ring"] as const).map((side) =>
      subtract(volts(`amplifier: in.${side}`), volts("amplifier: chassis")),
    );
    for (const side of sides) expectPrinted([size(side)], printed);
    const [left, right] = sides;
    expect(left?.re).toBeCloseTo(right?.re ?? Number.NaN, 3);
  });
});
