import { expect, test } from "vitest";
import type { Happening, MeasuredGains } from "#core/checks/finding.ts";
import { leadId, leadRig, provedAt } from "#core/proving/lead-rig.ts";
import { returnTold } from "#core/proving/return-told.ts";
import { earMatrix } from "#core/rig/ear-matrix.ts";
import { build } from "#core/rig/rig.ts";
import { type RigFault, rigFaults } from "#core/rig/rig-faults.ts";

const drawn = leadRig({ kind: "TRS lead", by: "load box" });
const rig = build(drawn);
const sleeve = rig.part(leadId).body.find(({ name }) => name === "sleeve");
const own = sleeve?.kind === "resistor" ? sleeve.ohms : Number.NaN;

/** What a load box gives with so many ohms more in the return. */
const gainsWith = (more: number): MeasuredGains => {
  const fault: RigFault = {
    ...(rigFaults(rig).find(({ part }) => part === leadId) as RigFault),
    edits: [{ edit: "ohms", element: "sleeve", ohms: own + more }],
  };
  const [[ll, lr], [rl, rr]] = earMatrix(rig, provedAt, [fault]).map((row) =>
    row.map(({ re, im }) => [re, im] as const),
  ) as [[P, P], [P, P]];
  return [ll, lr, rl, rr];
};
type P = readonly [number, number];

const measured = (gains: MeasuredGains): readonly Happening[] => [
  {
    kind: "finding",
    finding: {
      asked: { check: "matrix", position: provedAt },
      gains,
      error: 1e-5,
    },
  },
];

test.for([0, 0.2, 1, 5, 30, 100, 300])("%d ohms more in the return are read back", (more) => {
  const raw = gainsWith(more);
  // Handbook, section 7: ±0.05 Ω or a tenth, a quarter from 100 Ω on.
  const allowed = Math.max(0.05, (more > 100 ? 0.25 : 0.1) * more);
  const told = returnTold(drawn, measured(raw));
  if (typeof told !== "object") throw new Error(String(told));
  expect(Math.abs(told.ohms - more)).toBeLessThan(allowed);
});

test("a return that is better than drawn is no trouble", () => {
  const nothing: P = [0, 0];
  const told = returnTold(drawn, measured([[1, 0], nothing, nothing, [1, 0]]));
  expect(told).toMatchObject({ ohms: expect.any(Number) });
  expect(typeof told === "object" && told.ohms).toBeLessThan(0);
});

test("an open return is open", () => {
  expect(returnTold(drawn, measured(gainsWith(1e6)))).toBe("open");
});

test("what no load box shows is not told", () => {
  const looped = leadRig({ kind: "TRS lead", by: "return" });
  expect(returnTold(looped, measured(gainsWith(5)))).toBeUndefined();
  expect(returnTold(drawn, [])).toBeUndefined();
});
