import { describe, expect, test } from "vitest";
import type { MeasuredGains } from "#core/checks/finding.ts";
import { leadId, leadRig, provedAt } from "#core/proving/lead-rig.ts";
import { returnOhms } from "#core/proving/return-ohms.ts";
import { unseenBy } from "#core/proving/unseen.ts";
import { busesOf } from "#core/rig/circuit-step.ts";
import { earMatrix } from "#core/rig/ear-matrix.ts";
import { type BuiltRig, build, type Rig } from "#core/rig/rig.ts";
import { type RigFault, rigFaults } from "#core/rig/rig-faults.ts";
import { type Complex, size } from "#core/units/complex.ts";
import { toDecibels } from "#core/units/decibels.ts";
import type { Ohms } from "#core/units/units.ts";
import { stretchBlock } from "./chain-deck.ts";
import { installed, simulate } from "./ngspice.ts";

const looped = leadRig({ kind: "TRS lead", by: "return" });
const withOhms = (rig: Rig, ohms: Ohms): Rig => ({
  ...rig,
  parts: rig.parts.map((part) =>
    part.id === "source" ? { ...part, settings: { ...part.settings, "output ohms": ohms } } : part,
  ),
});

/** So many ohms more in the return of a lead. */
const moreInReturn = (rig: BuiltRig, more: Ohms): RigFault => {
  const wire = rig.part(leadId).body.find(({ name }) => name === "sleeve");
  if (wire?.kind !== "resistor") throw new Error("the lead has no sleeve");
  return {
    ...(rigFaults(rig).find(({ part }) => part === leadId) as RigFault),
    id: `return of ${more}`,
    edits: [{ edit: "ohms", element: "sleeve", ohms: wire.ohms + more }],
  };
};

/** 100 Ω a side, 10 kΩ in, one ground: handbook, section 7. What is left between the sides is the cable's capacitance. */
describe("a lead looped from an interface to itself", () => {
  const rig = build(withOhms(looped, 100));
  const levels = (more: Ohms) =>
    earMatrix(rig, provedAt, [moreInReturn(rig, more)])
      .flat()
      .map((gain) => toDecibels(size(gain)));

  test.each([0, 1, 100, 10_000, 1e9])("with %d Ω in its sleeve reads -0.087 dB", (more) => {
    const [ll = 0, lr = 0, rl = 0, rr = 0] = levels(more);
    expect(ll).toBeCloseTo(-0.087, 3);
    expect(rr).toBeCloseTo(-0.087, 3);
    expect(lr).toBeLessThan(-70);
    expect(rl).toBeLessThan(-70);
  });

  test("does not show a lost sleeve, and says so; a load box shows it", () => {
    const by = (how: "return" | "load box") =>
      unseenBy(how, leadRig({ kind: "TRS lead", by: how }));
    expect(by("return").wires).toEqual([["near.sleeve", "far.sleeve"]]);
    expect(by("load box").wires).toEqual([]);
  });
});

describe("a balanced line with one leg open, into a differential input", () => {
  const level = (balancing: "actively balanced" | "impedance-balanced", name: string) => {
    const rig = build(leadRig({ kind: "XLR lead", by: "return", stage: { balancing } }));
    const fault = rigFaults(rig).find((one) => one.part === leadId && one.name === name);
    const [healthy, open] = [[], fault === undefined ? [] : [fault]].map((faults) =>
      size(earMatrix(rig, provedAt, faults)[0]?.[0] ?? { re: 0, im: 0 }),
    );
    return toDecibels((open ?? 0) / (healthy ?? 1));
  };

  test.each([
    ["actively balanced", "hot open", -6],
    ["actively balanced", "cold open", -6],
    ["impedance-balanced", "cold open", 0],
    ["actively balanced", "screen open", 0],
  ] as const)("%s, %s: %d dB (handbook, section 5)", (balancing, name, dB) => {
    expect(level(balancing, name)).toBeCloseTo(dB, 0);
  });

  test("an open cold leg is listed as unseen behind the one stage, and not behind the other", () => {
    const cold = (balancing: "actively balanced" | "impedance-balanced") =>
      unseenBy("return", leadRig({ kind: "XLR lead", by: "return", stage: { balancing } })).wires;
    expect(cold("impedance-balanced")).toContainEqual(["near.pin 3", "far.pin 3"]);
    expect(cold("actively balanced")).not.toContainEqual(["near.pin 3", "far.pin 3"]);
  });
});

const sweep: readonly Ohms[] = [
  0.2, 0.3, 0.5, 1, 2, 3, 5, 10, 20, 30, 50, 100, 200, 300, 500, 1000,
];

/** What the load box is held to: handbook, section 7. */
const allowed = (ohms: Ohms): Ohms => (ohms <= 100 ? Math.max(0.05, 0.1 * ohms) : 0.25 * ohms);

const stages = [
  ["headphone output of 0.5 Ω", withOhms(leadRig({ kind: "TRS lead", by: "load box" }), 0.5)],
  ["headphone output of 10 Ω", leadRig({ kind: "TRS lead", by: "load box" })],
  ["headphone output of 120 Ω", withOhms(leadRig({ kind: "TRS lead", by: "load box" }), 120)],
  [
    "impedance-balanced pair",
    leadRig({ kind: "insert Y", by: "load box", stage: { balancing: "impedance-balanced" } }),
  ],
  [
    "actively balanced pair",
    leadRig({ kind: "insert Y", by: "load box", stage: { balancing: "actively balanced" } }),
  ],
] as const;

/** The same box with resistors that lie off by one in a hundred: both the same way, which is the worst. */
const offLoads = (rig: BuiltRig): RigFault => ({
  ...moreInReturn(rig, 0),
  part: "load box",
  id: "loads of 1 %",
  edits: [
    { edit: "ohms", element: "left load", ohms: 33 * 1.01 },
    { edit: "ohms", element: "right load", ohms: 33 * 1.01 },
  ],
});

/** What ngspice says that the box shows, each entry beside the source's two sides. */
function simulated(rig: BuiltRig, all: readonly Ohms[]): MeasuredGains[] {
  const buses = busesOf(rig, "source");
  const used =
    buses.includes("line left") && rig.plugged.some(({ socket }) => socket === "line left");
  const columns = (used ? ["line left", "line right"] : ["left", "right"]).map((bus) =>
    buses.indexOf(bus),
  );
  const blocks = all.map((more) =>
    stretchBlock(rig, "load box", [moreInReturn(rig, more), offLoads(rig)]),
  );
  const pair = ({ re, im }: Complex) => [re, im] as const;
  return simulate(blocks, buses.length, [1000]).map(([matrix = []]) => {
    const at = (row: number, column: number) =>
      pair(matrix[row]?.[columns[column] ?? 0] ?? { re: 0, im: 0 });
    return [at(0, 0), at(0, 1), at(1, 0), at(1, 1)];
  });
}

describe.runIf(installed() || process.env.CI !== undefined)(
  "ohms of a return through a load box, ngspice as the lead",
  () => {
    test.each(stages)("%s", (_, drawn) => {
      const rig = build(drawn);
      const read = simulated(rig, sweep).map((gains) => returnOhms(rig, provedAt, gains, 1e-4));
      const off = read.map((one, at) => {
        const ohms = sweep[at] ?? 0;
        return typeof one === "string" ? Infinity : Math.abs(one.ohms - ohms) / allowed(ohms);
      });
      console.log(
        off.map((share, at) => `${sweep[at]} Ω: ${(100 * share).toFixed(0)} %`).join(", "),
      );
      expect(Math.max(...off)).toBeLessThan(1);
      const beyond = simulated(rig, [3000, 10_000, 1e9]);
      expect(beyond.map((gains) => returnOhms(rig, provedAt, gains, 1e-4))).toEqual([
        "open",
        "open",
        "open",
      ]);
    });
  },
);
