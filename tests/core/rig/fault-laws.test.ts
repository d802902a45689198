import fc from "fast-check";
import { expect, test } from "vitest";
import { earMatrix } from "#core/rig/ear-matrix.ts";
import type { BuiltRig } from "#core/rig/rig.ts";
import { type RigFault, rigFaults } from "#core/rig/rig-faults.ts";
import { size, subtract } from "#core/units/complex.ts";
import type { Matrix } from "#core/units/matrix.ts";
import { frequencies } from "#tests/core/circuit/random-circuit.ts";
import { everyRig } from "#tests/reference/every-rig.ts";
import { redrawn } from "#tests/reference/redrawn.ts";
import { someOf } from "./some-faults.ts";

const audible = frequencies.filter((at) => at > 0);
const ways = everyRig.flatMap((rig) => rig.positions.map(({ id }) => ({ rig, position: id })));
const some = fc
  .constantFrom(...ways)
  .chain(({ rig, position }) =>
    someOf(rigFaults(rig)).map((faults) => ({ rig, position, faults })),
  );
const ids = (faults: readonly RigFault[]) => faults.map(({ id }) => id).join(" and ");

test("taking a fault away leaves exactly what was there before it, to the last bit", () => {
  fc.assert(
    fc.property(some, audible, fc.nat(), ({ rig, position, faults }, at, which) => {
      const fewer = faults.filter((_, index) => index !== which % faults.length);
      const used = redrawn(rig);
      const before = earMatrix(used, position, fewer, at);
      earMatrix(used, position, faults, at);
      expect(earMatrix(used, position, fewer, at), ids(faults)).toEqual(before);
      expect(earMatrix(redrawn(rig), position, fewer, at), ids(faults)).toEqual(before);
    }),
    { numRuns: 300 },
  );
});

test("after every fault of every rig the healthy matrix is what it was, to the last bit", () => {
  for (const { rig, position } of ways) {
    const used = redrawn(rig);
    const healthy = earMatrix(used, position, []);
    for (const fault of rigFaults(used)) earMatrix(used, position, [fault]);
    expect(earMatrix(used, position, []), rig.name).toEqual(healthy);
  }
});

const distance = (a: Matrix, b: Matrix): number =>
  Math.max(
    ...a.flatMap((row, ear) =>
      row.map((gain, side) => size(subtract(gain, b[ear]?.[side] ?? { re: 9, im: 9 }))),
    ),
  );

test("the order of faults that can be there at once does not matter", () => {
  fc.assert(
    fc.property(some, audible, ({ rig, position, faults }, at) => {
      const there = earMatrix(rig, position, faults, at);
      const back = earMatrix(rig, position, faults.toReversed(), at);
      expect(distance(there, back), ids(faults)).toBeLessThan(1e-9);
    }),
    { numRuns: 1000 },
  );
});

/** What an edit speaks of: two of one part that speak of the same could get in each other's way. */
const spokenOf = ({ part, edits }: RigFault): readonly string[] =>
  edits.flatMap((edit) => {
    if ("element" in edit) return [`${part}: ${edit.element}`];
    if ("control" in edit) return [`${part}: ${edit.control}`];
    return "plug" in edit ? [`${part}: ${edit.plug}`] : [];
  });

/** Every two faults of a rig that speak of the same and are no alternatives. */
function meeting(rig: BuiltRig): readonly (readonly [RigFault, RigFault])[] {
  const faults = rigFaults(rig).filter(({ comesAndGoes }) => !comesAndGoes);
  return faults.flatMap((a, at) =>
    faults
      .slice(at + 1)
      .filter((b) => a.part === b.part && a.slot !== b.slot)
      .filter((b) => spokenOf(a).some((one) => spokenOf(b).includes(one)))
      .map((b) => [a, b] as const),
  );
}

test("nor where two of them speak of the same wire, plug or control", { timeout: 60_000 }, () => {
  const known = new Set<string>();
  for (const { rig, position } of ways)
    for (const [a, b] of meeting(rig)) {
      const key = [position, rig.part(a.part).kind, a.at, a.name, b.at, b.name].join();
      if (known.has(key)) continue;
      known.add(key);
      const there = earMatrix(rig, position, [a, b]);
      expect(distance(there, earMatrix(rig, position, [b, a])), ids([a, b])).toBeLessThan(1e-9);
    }
  expect(known.size).toBeGreaterThan(1000);
});

test("what is open stays open, whatever dirt is on the same wire", () => {
  const rig = everyRig.find(({ parts }) => parts.some(({ kind }) => kind === "mono adapter"));
  if (rig === undefined) throw new Error("no rig has a mono adapter");
  const fault = (at: string, name: string): RigFault => {
    const found = rigFaults(rig).find((one) => one.at === at && one.name === name);
    if (found === undefined) throw new Error(`no fault ${name} at ${at}`);
    return found;
  };
  const open = fault("plug", "tip open");
  const both = [open, fault("socket", "tip of 30 ohms")];
  expect(size(earMatrix(rig, "position 1", [])[0]?.[0] ?? { re: 0, im: 0 })).toBeGreaterThan(0.4);
  for (const gain of earMatrix(rig, "position 1", both).flat())
    expect(size(gain)).toBeLessThan(1e-6);
});
