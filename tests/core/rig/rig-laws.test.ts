import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Branch } from "#core/diagnosis/branch.ts";
import { isUnlisted } from "#core/diagnosis/fault-sets.ts";
import { earMatrix } from "#core/rig/ear-matrix.ts";
import { plugged } from "#core/rig/mating.ts";
import { midband } from "#core/rig/midband.ts";
import { build, clientId, listenerOf, type Rig } from "#core/rig/rig.ts";
import { type RigFault, rigFaults } from "#core/rig/rig-faults.ts";
import { builtInRigs, fromHeadphoneSocket, fromMainPair } from "#core/rig/rigs.ts";
import { stepsTo } from "#core/rig/steps.ts";
import { modelFor } from "#core/session/derive.ts";
import { size, subtract } from "#core/units/complex.ts";
import { chain, type Matrix } from "#core/units/matrix.ts";

const distance = (a: Matrix, b: Matrix) =>
  Math.max(
    ...a.flatMap((row, ear) =>
      row.map((gain, side) => size(subtract(gain, b[ear]?.[side] ?? { re: 9, im: 9 }))),
    ),
  );

const fiveSeats = new Map([
  ["Tallow Hall story evening", 5],
  ["Tallow Hall, from the main pair", 5],
  ["Straight into the laptop", 1],
]);

describe.each(builtInRigs.map((rig) => [rig.name, rig] as const))("%s", (name, rig: Rig) => {
  const built = build(rig);
  const faults = rigFaults(built);
  const steps = new Map(
    rig.positions.flatMap(({ id }) => stepsTo(built, id).map((step) => [step.id, step] as const)),
  );

  test("healthy, every position has its sides the right way round, in polarity and alike", () => {
    for (const { id } of rig.positions) {
      const [[ll, lr] = [], [rl, rr] = []] = earMatrix(built, id, []);
      for (const own of [ll, rr]) expect(own?.re).toBeGreaterThan(0.7);
      for (const other of [lr, rl]) expect(size(other ?? { re: 9, im: 9 })).toBeLessThan(0.01);
      expect(ll?.re).toBeCloseTo(rr?.re ?? 9, 9);
    }
  });

  test("every fault belongs to exactly one step, and has an id of its own", () => {
    for (const fault of faults) {
      const owners = [...steps.values()].filter((step) => step.owns(fault)).map(({ id }) => id);
      expect(owners, fault.id).toHaveLength(1);
    }
    expect(new Set(faults.map(({ id }) => id)).size).toBe(faults.length);
  });

  test("its tree holds each fault once, under the positions it reaches", () => {
    const { branches, root } = modelFor(rig).model;
    const listed = (branch: Branch) => branch.faults.filter((fault) => !isUnlisted(fault));
    const owned = branches.flatMap((branch) => listed(branch).map(({ id }) => id));
    expect(new Set(owned).size).toBe(owned.length);
    const idle = faults.filter(({ id }) => !owned.includes(id));
    expect(idle.every(({ at }) => at === "settings")).toBe(true); // knobs that do nothing here
    for (const branch of branches) {
      for (const fault of listed(branch))
        expect(reached(fault), fault.id).toEqual(branch.positions);
      expect(branch.below.flatMap(({ positions }) => positions).toSorted()).toEqual(
        branch.below.length > 0 ? branch.positions.toSorted() : [],
      );
    }
    expect(root.positions).toHaveLength(fiveSeats.get(name) ?? Number.NaN);
  });

  const reached = (fault: RigFault) =>
    rig.positions.flatMap(({ id }) =>
      stepsTo(built, id).some((step) => step.owns(fault)) ? [id] : [],
    );

  test("a fault changes only the positions its step serves", () => {
    for (const { id } of rig.positions) {
      const way = stepsTo(built, id);
      const healthy = earMatrix(built, id, []);
      const elsewhere = faults.filter((fault) => !way.some((step) => step.owns(fault)));
      for (const fault of elsewhere)
        expect(earMatrix(built, id, [fault]), fault.id).toEqual(healthy);
    }
  });

  test("taking a fault away leaves no trace of it", () => {
    const [first] = rig.positions;
    if (first === undefined) throw new Error("a rig without positions");
    const healthy = earMatrix(built, first.id, []);
    for (const fault of faults) {
      earMatrix(built, first.id, [fault]);
      expect(earMatrix(built, first.id, []), fault.id).toEqual(healthy);
    }
  });
});

test("of the faults that can be there at once, no two put two plugs into one socket", () => {
  const rig = build(fromMainPair("one seat", ["one"]));
  const moving = rigFaults(rig).filter(({ edits }) => edits.some(({ edit }) => edit === "socket"));
  const both = moving.flatMap((a) => moving.filter((b) => a.slot !== b.slot).map((b) => [a, b]));
  for (const faults of both) {
    const sockets = plugged(rig.plugged, faults).map(({ into, socket }) => `${into}, ${socket}`);
    const ids = faults.map(({ id }) => id).join(" and ");
    expect(sockets, ids).toEqual([...new Set(sockets)]);
  }
});

describe("two faults", () => {
  const rig = build(fromHeadphoneSocket("two seats", ["one", "two"]));
  const faults = rigFaults(rig);
  const ways = stepsTo(rig, "position 1");
  const any = fc.nat(faults.length - 1).map((at) => faults[at] as RigFault);
  const gainful = ways.filter((step) => step.id.startsWith("in") || step.id === clientId);

  test("the order of a set does not matter where its slots differ", () => {
    fc.assert(
      fc.property(any, any, (a, b) => {
        if (a.part === b.part && a.slot === b.slot) return;
        const there = earMatrix(rig, "position 1", [a, b]);
        expect(
          distance(there, earMatrix(rig, "position 1", [b, a])),
          `${a.id}, ${b.id}`,
        ).toBeLessThan(1e-9);
      }),
    );
  });

  test("a step sees only its own faults: the drivers get the product of the steps", () => {
    fc.assert(
      fc.property(any, any, (a, b) => {
        if ([a, b].some(({ part }) => part === listenerOf("position 1"))) return;
        const product = gainful
          .map((step) => step.behaviour([a, b].filter(step.owns), 0, midband).gains)
          .reduce((first, then) => chain(then, first));
        expect(distance(earMatrix(rig, "position 1", [a, b]), product)).toBeLessThan(1e-12);
      }),
    );
  });
});
