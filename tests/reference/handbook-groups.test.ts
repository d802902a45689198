import { describe, expect, test } from "vitest";
import type { Circuit } from "#core/circuit/circuit.ts";
import { solve } from "#core/circuit/solve.ts";
import { straightIn } from "#core/rig/rigs.ts";
import { midband } from "#core/rig/steps.ts";
import { stretchInto } from "#core/rig/stretch.ts";
import { toDecibels } from "#core/units/decibels.ts";
import type { Ohms } from "#core/units/units.ts";
import { changedRig, faultOf, withOhms } from "./changed-rig.ts";
import { expectPrinted } from "./printed.ts";

const set = "headphones 1";
const copy = (number: number) => `headphones ${number}`;

/** So many sets on one output with no amplifier between; the first has the fault, if any. */
function group(source: Ohms, sets: number, fault?: string): Circuit {
  const laptop = withOhms({ "phones tip": source, "phones ring": source });
  const rig = changedRig(straightIn, { laptop });
  const faults = fault === undefined ? [] : [faultOf(rig, `${set} / body / ${fault}`)];
  const good = stretchInto(rig, set, []).circuit.filter(({ name }) => name.startsWith(set));
  const named = (text: string, to: number) => text.replace(set, copy(to));
  const others = Array.from({ length: sets - 1 }, (_, index) =>
    good.map((element) => ({
      ...element,
      name: named(element.name, index + 2),
      a: named(element.a, index + 2),
      b: named(element.b, index + 2),
    })),
  );
  return [...stretchInto(rig, set, faults).circuit, ...others.flat()];
}

/** L←L, L←R, R←L, R←R of one set of a group. */
function gainsAt(circuit: Circuit, number: number): number[] {
  const voltages = solve(circuit, midband, ["left", "right"]);
  return ["left", "right"].flatMap((side) =>
    voltages.map(
      (volts) =>
        volts(`${copy(number)}: ${side} plus`).re - volts(`${copy(number)}: ${side} minus`).re,
    ),
  );
}

/** Handbook, section 5, 'passive groups load each other' (C): computed by nodal analysis in a SPICE simulator. */
describe("sets of 32 ohms on one output", () => {
  test.each([
    [1, "0.400"],
    [2, "0.252"],
    [4, "0.145"],
  ])("%i on 47 ohms: %s", (sets, printed) => {
    const [left = 0, , , right = 0] = gainsAt(group(47, sets), sets);
    expectPrinted([left, right], `${printed} ${printed}`);
  });

  test.each([
    [47, "-19.6"],
    [10, "-16.3"],
    [1, "-6.5"],
  ])(
    "ring-sleeve short in one of four on %i ohms: the neighbours' right at %s dB",
    (source, printed) => {
      const healthy = gainsAt(group(source, 4), 4);
      const beside = gainsAt(group(source, 4, "ring and sleeve shorted"), 4);
      expectPrinted([toDecibels((beside[3] ?? 0) / (healthy[3] ?? 0))], printed);
      expectPrinted([beside[0] ?? 0], (healthy[0] ?? 0).toFixed(2));
    },
  );

  test("tip-ring short in one of four on 47 ohms: its neighbours are mono", () => {
    const [ll = 0, lr = 0, rl = 0, rr = 0] = gainsAt(group(47, 4, "tip and ring shorted"), 4);
    for (const [own, other] of [
      [ll, lr],
      [rr, rl],
    ] as const)
      expect(Math.abs(toDecibels(own / other))).toBeLessThan(1.5);
  });
});
