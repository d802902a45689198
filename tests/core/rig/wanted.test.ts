import { describe, expect, test } from "vitest";
import { hide } from "#core/bench/bench.ts";
import { looksAt } from "#core/checks/look.ts";
import { relativeGains } from "#core/rig/ear-matrix.ts";
import { build, clientId } from "#core/rig/rig.ts";
import { rigFaults } from "#core/rig/rig-faults.ts";
import { builtInRigs, fromHeadphoneSocket } from "#core/rig/rigs.ts";
import { modelFor } from "#core/session/derive.ts";
import { english } from "#core/words/english.ts";
import { faultText, mendText } from "#core/words/fault-text.ts";

const plan = fromHeadphoneSocket("two seats", ["one", "two"]);
const rig = build(plan);
const meant = rigFaults(rig).filter(({ part }) => part === clientId);

describe("a feed that was ordered so", () => {
  test.each([
    ["mono is meant", [0.5, 0.5, 0.5, 0.5]],
    ["left ear alone is meant", [0.5, 0.5, 0, 0]],
    ["right ear alone is meant", [0, 0, 0.5, 0.5]],
  ])("%s: it arrives so at every position", (name, gains) => {
    const fault = meant.find((one) => one.name === name);
    if (fault === undefined) throw new Error(`nobody orders ${name}`);
    for (const { id } of rig.positions)
      for (const [at, gain] of relativeGains(rig, id, [fault]).entries())
        expect(gain).toBeCloseTo(gains[at] ?? Number.NaN, 1);
  });

  test("is of what all share, one of three, and asking shows which", () => {
    expect(meant.map(({ weight }) => weight)).toEqual([60, 20, 20]);
    expect(new Set(meant.map(({ slot }) => slot)).size).toBe(1);
    const { root } = modelFor(plan).model;
    expect(root.faults.filter(({ part }) => part === clientId).map(({ id }) => id)).toEqual(
      meant.map(({ id }) => id),
    );
    const [look] = looksAt(rig, meant);
    expect(look?.place).toBe(clientId);
    expect(look?.seconds).toBe(10);
    expect(look?.answers).toHaveLength(4);
  });

  test("is never called a fault, and leaves nothing to mend", () => {
    for (const fault of meant) {
      expect(faultText(english, rig, fault)).toMatch(/^the feed is meant to be/);
      expect(mendText(english, rig, fault)).toMatch(/^nothing to mend/);
      for (const text of [faultText(english, rig, fault), mendText(english, rig, fault)])
        expect(text).not.toMatch(/fault|wrong|broken|replace/);
    }
  });

  test("is planted in no simulated rig", { timeout: 30_000 }, () => {
    for (const one of builtInRigs)
      for (let seed = 0; seed < 3000; seed++)
        expect(hide(one, seed).hidden.part).not.toBe(clientId);
  });
});
