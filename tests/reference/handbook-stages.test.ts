import { describe, expect, test } from "vitest";
import { earth } from "#core/circuit/circuit.ts";
import { mainsEarth, resistor } from "#core/parts/boxes.ts";
import type { Part } from "#core/parts/part.ts";
import type { Balancing } from "#core/parts/stages.ts";
import { solved } from "#core/rig/circuit-step.ts";
import { type BuiltRig, build, type Rig } from "#core/rig/rig.ts";
import { changedRig, faultOf, onEarthBy } from "./changed-rig.ts";
import { columns, expectPrinted, gains, levels } from "./printed.ts";
import { fed, fromPair, fromSocket, plugTop } from "./small-rigs.ts";
import { mainLeft, mainRight, send, silent, staged } from "./stages.ts";

/** Handbook, section 4 (C): computed by nodal analysis in a SPICE simulator. */
describe("a quasi-balanced mono send of 150 ohms", () => {
  const rig = fed("quasi-balanced", "TRS lead", fromSocket("send"));
  const from = (amplifier: (part: Part) => Part): BuiltRig => changedRig(rig, { amplifier });

  test("into an earthed amplifier: one ear", () => {
    const matrix = solved(from(onEarthBy(mainsEarth())), "amplifier", []);
    const [left = 0, right = 0] = levels(columns(matrix, send));
    expectPrinted([left], "-0.1");
    expect(right).toBeLessThan(silent);
  });

  test("into a floating amplifier: inverted in the other ear", () => {
    const matrix = solved(from(onEarthBy(plugTop)), "amplifier", []);
    expectPrinted(gains(columns(matrix, send)), ".49 -.49");
  });
});

// Handbook, section 4 (C). 'Transformer 100 to 600 ohms, +5.9 to +5.0': 5.9 fits 100 ohms in all, 5.0 fits 600 a leg. The rows with
// the ring left open are in the tests of the stages.
test.each([
  ["cross-coupled", 50, "5.9"],
  ["transformer", 50, "5.9"],
  ["transformer", 600, "5.0"],
] as const)(
  "both jacks, %s, %i ohms a leg, insert Y with ring to sleeve at the output end",
  (balancing, leg, printed) => {
    const rig = staged(fed(balancing, "insert Y", fromPair), { balancing, "leg ohms": leg });
    const built = changedRig(rig, { amplifier: onEarthBy(mainsEarth()) });
    const [ll = 0, , , rr = 0] = levels(
      columns(solved(built, "amplifier", []), mainLeft, mainRight),
    );
    expectPrinted([ll, rr], `${printed} ${printed}`);
  },
);

/** What the handbook calls nothing of a transformer: −38 dB (section 4). */
const nothing = -37.5;

/** Handbook, section 5 (C): a balanced line into a differential input with one leg open. A mixer's input is one. */
describe("a balanced line with one conductor open", () => {
  const line = (balancing: Balancing, leg: number): Rig => ({
    name: "line",
    parts: [
      { id: "mixer", kind: "mixer", settings: { balancing, "leg ohms": leg } },
      { id: "lead", kind: "TRS lead" },
      { id: "far mixer", kind: "mixer" },
    ],
    plugged: [
      { part: "lead", plug: "near", into: "mixer", socket: "send" },
      { part: "lead", plug: "far", into: "far mixer", socket: "1" },
    ],
    positions: [],
  });
  const sent = (rig: BuiltRig, name?: string) => {
    const faults = name === undefined ? [] : [faultOf(rig, `lead / body / ${name}`)];
    return levels(columns(solved(rig, "far mixer", faults), send))[0] ?? Number.NaN;
  };
  const active = build(line("actively balanced", 100));
  const impedance = build(line("impedance-balanced", 150));
  const cross = build(line("cross-coupled", 50));
  const transformer = build(line("transformer", 100));

  test.each([
    ["active, tip open", "-6.0", active, "tip open"],
    ["active, ring open", "-6.0", active, "ring open"],
    ["active, sleeve open", "0.0", active, "sleeve open"],
    ["impedance-balanced, ring open", "0.0", impedance, "ring open"],
    ["impedance-balanced, sleeve open", "0.0", impedance, "sleeve open"],
    ["transformer, sleeve open", "0.0", transformer, "sleeve open"],
    ["cross-coupled, tip open", "-9.5", cross, "tip open"],
    ["cross-coupled, ring open", "-9.5", cross, "ring open"],
    ["cross-coupled, sleeve open", "0.0", cross, "sleeve open"],
  ])("%s: %s dB", (_, printed, rig, name) => {
    expectPrinted([sent(rig, name) - sent(rig)], printed);
  });

  test.each([
    ["impedance-balanced, tip open", impedance, "tip open", silent],
    ["transformer, tip open", transformer, "tip open", nothing],
    ["transformer, ring open", transformer, "ring open", nothing],
  ])("%s: silence", (_, rig, name, below) => {
    expect(sent(rig, name) - sent(rig)).toBeLessThan(below);
  });
});

// Handbook, section 5: a stereo feed into one balanced input takes the difference, and the middle is gone.
test("a stereo feed into one balanced input takes the difference", () => {
  const rig: Rig = {
    name: "stereo into one input",
    parts: [
      { id: "laptop", kind: "laptop" },
      { id: "lead", kind: "TRS lead" },
      { id: "mixer", kind: "mixer" },
    ],
    plugged: [
      { part: "lead", plug: "near", into: "laptop", socket: "phones" },
      { part: "lead", plug: "far", into: "mixer", socket: "1" },
    ],
    positions: [],
  };
  const laptop = onEarthBy(resistor("mains earth", "chassis", earth, 0.02));
  expectPrinted(gains(solved(changedRig(rig, { laptop }), "mixer", [])), "1.00 -1.00 0 0");
});
