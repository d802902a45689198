import { describe, expect, test } from "vitest";
import { chassis, powered, resistor } from "#core/parts/boxes.ts";
import { type InputKind, inletOf } from "#core/parts/inputs.ts";
import type { Part } from "#core/parts/part.ts";
import {
  type Balancing,
  balancings,
  type Connector,
  legsOf,
  monoOutput,
} from "#core/parts/stages.ts";
import { expectPrinted, gains, levels } from "#tests/reference/printed.ts";
import { patched } from "./patched.ts";

/** What the handbook calls nothing: −38 dB, in the row of the transformer (section 4). */
const nothing = -37.5;

const bare = { plugs: [], controls: {}, faults: [], look: 1 } as const;

/** A box on earth with one output. */
const output = (by: Balancing, ohms = 0, connector: Connector = "jack"): Part => ({
  ...bare,
  sockets: [
    { name: "out", side: "out", ...monoOutput({ name: "out", connector, bus: "out", by, ohms }) },
  ],
  body: powered("mains-earthed"),
  takes: [],
});

/** A box with this input, 10 kΩ a side. */
const box = (kind: InputKind, supply: "mains-earthed" | "floating" = "mains-earthed"): Part => {
  const { sockets, takes, normals } = inletOf(kind, 10_000);
  return { ...bare, sockets, takes, normals, body: powered(supply) };
};

const tip = ["out.tip", "in.tip"] as const;
const ring = ["out.ring", "in.ring"] as const;
const sleeve = ["out.sleeve", "in.sleeve"] as const;
const lead = [tip, ring, sleeve];

/** The cold contact of an output tied to its screen, at the output's own end. */
const tied = (part: Part): Part => ({
  ...part,
  body: [...part.body, resistor("tie", "out.ring", "out.sleeve", 0.1)],
});

// Handbook, section 4 (C), into a stereo input of 10 kΩ a side: '+5.9', '+5.0', 'ring left open: −3.6', '−38, nothing'.
describe("one side of a pair into one side of a stereo input, dB of the voltage of one leg", () => {
  const side = (from: Part) =>
    levels(patched({ from, to: box("stereo jack"), wires: [tip, sleeve] }, "out"))[0] ?? Number.NaN;

  test.each([
    ["impedance-balanced", 150, "-0.13"],
    ["actively balanced", 100, "-0.09"],
    ["cross-coupled", 50, "-3.6"],
    ["transformer", 50, "-38"],
    ["transformer", 600, "-38"],
  ] as const)("%s, %i Ω a leg, ring left open: %s", (by, ohms, printed) => {
    expectPrinted([side(output(by, ohms))], printed);
  });

  test.each([
    ["cross-coupled", 50, "5.9"],
    ["transformer", 50, "5.9"],
    ["transformer", 600, "5.0"],
    ["impedance-balanced", 150, "-0.13"],
  ] as const)("%s, %i Ω a leg, ring to sleeve: %s", (by, ohms, printed) => {
    expectPrinted([side(tied(output(by, ohms)))], printed);
  });

  test.each([
    ["unbalanced", -0.19],
    ["unbalanced, ring tied to sleeve", -0.19],
  ] as const)("%s, 220 Ω: %f", (by, level) => {
    expect(side(output(by))).toBeCloseTo(level, 2);
  });
});

// Handbook, section 4 (C), by a lead of three wires into a stereo input.
describe("a mono output by TRS lead into a stereo input", () => {
  const ears = (from: Part, to = box("stereo jack")) =>
    gains(patched({ from, to, wires: lead }, "out"));

  test.each([
    ["impedance-balanced", "0.99 0"],
    ["actively balanced", "0.99 -0.99"],
    ["quasi-balanced", "0.99 0"],
    ["cross-coupled", "1.00 -1.00"],
    ["transformer", "0.99 -0.99"],
    ["unbalanced, ring tied to sleeve", "0.98 0"],
  ] as const)("%s: %s", (by, printed) => {
    expectPrinted(ears(output(by)), printed, 0.003);
  });

  test("quasi-balanced into a floating box: inverted in the other ear", () => {
    expectPrinted(ears(output("quasi-balanced"), box("stereo jack", "floating")), ".49 -.49");
  });
});

// Handbook, section 5 (C): 'a balanced line into a differential input with one leg open'.
describe("a balanced line into a differential input with one conductor open, dB of the whole line", () => {
  const line = (by: Balancing, ohms: number, wires: typeof lead) =>
    levels(patched({ from: output(by, ohms), to: box("one balanced jack"), wires }, "out"))[0] ??
    Number.NaN;
  const without = { tip: [ring, sleeve], ring: [tip, sleeve], sleeve: [tip, ring] };
  const change = (by: Balancing, ohms: number, open: keyof typeof without) =>
    line(by, ohms, without[open]) - line(by, ohms, lead);

  test.each([
    ["actively balanced", 100, "tip", "-6.0"],
    ["actively balanced", 100, "ring", "-6.0"],
    ["cross-coupled", 50, "tip", "-9.5"],
    ["cross-coupled", 50, "ring", "-9.5"],
    ["impedance-balanced", 150, "ring", "0.0"],
    ["impedance-balanced", 150, "sleeve", "0.0"],
    ["actively balanced", 100, "sleeve", "0.0"],
    ["cross-coupled", 50, "sleeve", "0.0"],
    ["transformer", 150, "sleeve", "0.0"],
  ] as const)("%s, %i Ω, %s open: %s", (by, ohms, open, printed) => {
    expectPrinted([change(by, ohms, open)], printed);
  });

  test.each([
    ["impedance-balanced", "tip"],
    ["transformer", "tip"],
    ["transformer", "ring"],
  ] as const)("%s, %s open: silence", (by, open) => {
    expect(change(by, 150, open)).toBeLessThan(nothing);
  });
});

test.each(balancings)("an XLR output, %s, is a jack with other names for its contacts", (by) => {
  const { hot, cold, screen } = legsOf.XLR;
  const pins = [hot, cold, screen].map((pin) => [`out.${pin}`, `in left.${pin}`] as const);
  const xlr = patched({ from: output(by, 150, "XLR"), to: box("XLR pair"), wires: pins }, "out");
  const wires = by === "unbalanced" ? [tip, sleeve] : lead;
  const jack = patched({ from: output(by, 150), to: box("one balanced jack"), wires }, "out");
  expect(gains(xlr)[0]).toBeCloseTo(gains(jack)[0] ?? Number.NaN, 4);
});

test("only an unbalanced jack has two springs", () => {
  for (const by of balancings)
    expect(output(by).sockets[0]?.kind).toBe(by === "unbalanced" ? "TS" : "TRS");
});

test("a quasi-balanced socket's sleeve is not connected inside: everything else's is", () => {
  for (const by of balancings) {
    const bush = output(by).sockets[0]?.circuit.find(
      ({ a, b }) => a === "out.sleeve" && b === chassis,
    );
    expect(bush?.kind === "resistor" && bush.ohms < 1).toBe(by !== "quasi-balanced");
  }
});
