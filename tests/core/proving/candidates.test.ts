import { describe, expect, test } from "vitest";
import type { Finding, Happening, MeasuredGains } from "#core/checks/finding.ts";
import type { PartKind } from "#core/parts/catalogue.ts";
import { type Unknown, whatThisIs } from "#core/proving/candidates.ts";
import { kindsWith, type LeadEnd, provable, sidesOf } from "#core/proving/ends.ts";
import { leadId, leadRig, provedAt } from "#core/proving/lead-rig.ts";
import { meterView } from "#core/proving/meter-view.ts";
import { earMatrix } from "#core/rig/ear-matrix.ts";
import { build } from "#core/rig/rig.ts";
import { type RigFault, rigFaults } from "#core/rig/rig-faults.ts";

const happened = (finding: Finding): Happening => ({ kind: "finding", finding });

/** Everything that a meter finds on a lead. */
function grid(kind: PartKind, fault?: (one: RigFault) => boolean): readonly Happening[] {
  const rig = build(leadRig({ kind, by: "meter" }));
  const planted = fault === undefined ? [] : rigFaults(rig).filter(fault).slice(0, 1);
  const view = meterView(rig);
  return view.pairs.map(({ from, to }) => {
    const [ohms = 0] = view.shown(planted, { from, to });
    return happened({
      asked: { check: "continuity", part: leadId, from, to },
      ...(ohms < 1e6 ? { ohms } : {}),
    });
  });
}

function matrix(kind: PartKind, by: "return" | "load box"): readonly Happening[] {
  const rig = build(leadRig({ kind, by }));
  const gains = earMatrix(rig, provedAt, [])
    .flat()
    .map(({ re, im }) => [re, im]) as unknown as MeasuredGains;
  return [happened({ asked: { check: "matrix", position: provedAt }, gains, error: 0.002 })];
}

const endsOf = (kind: PartKind): readonly [LeadEnd, LeadEnd] => {
  const sides = sidesOf(kind);
  if (sides === undefined) throw new Error(kind);
  return [sides.one.end, sides.other.end];
};
const unknown = (kind: PartKind, by: Unknown["by"]): Unknown => ({ ends: endsOf(kind), by });

/** Kinds whose ends another kind has too: there is something to tell. */
const shared = provable.filter((kind) => kindsWith(...endsOf(kind)).length > 1);

describe("a lead nobody knows", () => {
  test.each(shared)("a meter's grid tells a %s from all others with its ends", (kind) => {
    const [first, ...others] = whatThisIs(unknown(kind, "meter"), grid(kind));
    expect(first?.kind).toBe(kind);
    expect(first?.fault).toBeUndefined();
    expect(first?.probability).toBeGreaterThan(0.95);
    expect(others.length).toBeGreaterThan(0);
  });

  test("is a crossed one: a TRS lead with tip and ring exchanged, and no one-to-both lead", () => {
    const crossed = grid("TRS lead", ({ name }) => name === "tip and ring exchanged");
    const [first, second] = whatThisIs({ ends: ["TRS", "TRS"], by: "meter" }, crossed);
    expect([first?.kind, first?.fault?.name]).toEqual(["TRS lead", "tip and ring exchanged"]);
    expect(second?.explains).toBe(false);
  });

  test("pin 3 on pin 1 is told from pin 3 unused", () => {
    const kind = "two XLR to TRS lead, pin 3 to pin 1";
    const [first, second] = whatThisIs(unknown(kind, "meter"), grid(kind));
    expect([first?.kind, first?.explains]).toEqual([kind, true]);
    expect([second?.kind, second?.explains]).toEqual(["two XLR to TRS lead, pin 3 unused", false]);
  });

  test.each(["return", "load box"] as const)("by %s: one-to-both against one-to-right", (by) => {
    for (const kind of ["one-to-both lead", "one-to-right lead"] as const) {
      const [first] = whatThisIs(unknown(kind, by), matrix(kind, by));
      expect([first?.kind, first?.fault]).toEqual([kind, undefined]);
    }
  });

  test("nothing found: all are as likely, and each would explain it", () => {
    const all = whatThisIs({ ends: ["TS", "TRS"], by: "meter" }, []);
    expect(all.map(({ kind }) => kind).sort()).toEqual(["one-to-both lead", "one-to-right lead"]);
    for (const { probability, explains } of all) {
      expect(probability).toBeCloseTo(0.5, 6);
      expect(explains).toBe(true);
    }
  });
});
