import { describe, expect, test } from "vitest";
import type { PartKind } from "#core/parts/catalogue.ts";
import { provable } from "#core/proving/ends.ts";
import { leadId, leadRig } from "#core/proving/lead-rig.ts";
import { meterView } from "#core/proving/meter-view.ts";
import { unseenBy } from "#core/proving/unseen.ts";
import { wiringOf } from "#core/proving/wiring.ts";
import { build } from "#core/rig/rig.ts";
import { rigFaults } from "#core/rig/rig-faults.ts";

const drawn = (kind: PartKind) => build(leadRig({ kind, by: "meter" }));

/** The wires of a lead with one fault that are not as intended. */
function wrong(kind: PartKind, at: string, name: string) {
  const rig = drawn(kind);
  const fault = rigFaults(rig).find((one) => one.at === at && one.name === name);
  if (fault === undefined) throw new Error(`no ${name}`);
  return wiringOf(rig, [fault]).filter(({ state }) => state !== "as intended");
}

describe("wiring against what was meant", () => {
  test("a sound insert Y: tip to the left plug, ring to the right, the sleeve to both", () => {
    expect(wiringOf(drawn("insert Y"), []).map(({ from, to, state }) => [from, to, state])).toEqual(
      [
        ["stem.tip", "left.tip", "as intended"],
        ["stem.sleeve", "left.sleeve", "as intended"],
        ["stem.ring", "right.tip", "as intended"],
        ["stem.sleeve", "right.sleeve", "as intended"],
      ],
    );
  });

  test.each([
    ["TRS lead", "body", "tip open", [["near.tip", "far.tip", "open"]]],
    [
      "TRS lead",
      "body",
      "tip and ring exchanged",
      [
        ["near.tip", "far.tip", "exchanged"],
        ["near.ring", "far.ring", "exchanged"],
      ],
    ],
    ["TRS lead", "body", "return of 10 ohms", [["near.sleeve", "far.sleeve", "resistive"]]],
    ["XLR lead", "body", "hot and cold shorted", [["far.pin 2", "far.pin 3", "joined"]]],
    ["insert Y", "right", "sleeve open", [["stem.sleeve", "right.sleeve", "open"]]],
    [
      "insert Y",
      "body",
      "legs exchanged",
      [
        ["stem.tip", "left.tip", "exchanged"],
        ["stem.ring", "right.tip", "exchanged"],
      ],
    ],
  ] as const)("%s, %s: %s", (kind, at, name, expected) => {
    const wires = wrong(kind, at, name);
    expect(wires.map(({ from, to, state }) => [from, to, state])).toEqual(expected);
  });

  test.each(provable)(
    "%s: sound as drawn, and every fault that a meter sees changes it",
    (kind) => {
      const rig = drawn(kind);
      const view = meterView(rig);
      expect(wiringOf(rig, []).every(({ state }) => state === "as intended")).toBe(true);
      const silent = rigFaults(rig)
        .filter(({ part }) => part === leadId)
        .filter((fault) => view.all([fault]) !== view.all([]))
        .filter((fault) => wiringOf(rig, [fault]).every(({ state }) => state === "as intended"));
      expect(silent.map(({ id }) => id)).toEqual([]);
    },
  );
});

test("a meter misses no wire, and sees no capacitance; a loop sees no sleeve", () => {
  for (const kind of provable)
    expect(unseenBy("meter", leadRig({ kind, by: "meter" })).wires, kind).toEqual([]);
  const unseen = (by: "meter" | "return") => unseenBy(by, leadRig({ kind: "TRS lead", by }));
  expect(unseen("meter")).toMatchObject({ faults: [], capacitance: true });
  expect(unseen("return").wires).toEqual([["near.sleeve", "far.sleeve"]]);
});
