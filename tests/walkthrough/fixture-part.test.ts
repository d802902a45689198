import { expect, test, vi } from "vitest";
import { isUnlisted } from "#core/diagnosis/fault-sets.ts";
import type { PartKind } from "#core/parts/catalogue.ts";
import { predictionAt } from "#core/patching/prediction.ts";
import { build, type Rig } from "#core/rig/rig.ts";
import { modelFor } from "#core/session/derive.ts";
import { seeded } from "#core/units/random.ts";
import { english } from "#core/words/english.ts";
import { faultText, mendText } from "#core/words/fault-text.ts";
import { installed } from "#tests/reference/ngspice.ts";
import { compareAll, frequencies, stretchCases } from "#tests/reference/simulated.ts";
import { beyond, table as simulated } from "#tests/reference/tables.ts";
import { score, table } from "./score.ts";
import { walk } from "./walk.ts";

// One catalogue line, here by a mock of the catalogue: the part's file is tests/fixtures/wall-plate.ts, and its faults' words are
// there already. Nothing else is touched.
vi.mock("#core/parts/catalogue.ts", async (original) => {
  const real = await original<typeof import("#core/parts/catalogue.ts")>();
  const { wallPlate } = await import("#tests/fixtures/wall-plate.ts");
  return { ...real, catalogue: { ...real.catalogue, "wall plate": wallPlate } };
});

const rig: Rig = {
  name: "through the wall",
  parts: [
    { id: "interface", kind: "sound interface" },
    { id: "plate", kind: "wall plate" as PartKind, settings: { metres: 8 } },
    { id: "headphones 1", kind: "headphones" },
  ],
  plugged: [
    { part: "plate", plug: "tail", into: "interface", socket: "phones" },
    { part: "headphones 1", plug: "plug", into: "plate", socket: "front" },
  ],
  positions: [{ id: "position 1", name: "1 you", wears: "headphones 1" }],
};

test("a part that was added is predicted, spoken of, and its faults are found", () => {
  expect(predictionAt(build(rig), "headphones 1").effect).toBe("straight");
  const { groups, model } = modelFor(rig);
  const planted = groups
    .filter(({ inaudible }) => !inaudible)
    .flatMap((group) =>
      group.faults
        .filter((fault) => fault.part === "plate" && !isUnlisted(fault) && !fault.comesAndGoes)
        .map((fault) => ({ fault, group })),
    );
  expect(planted.length).toBeGreaterThan(10);
  for (const { fault } of planted)
    for (const text of [faultText, mendText])
      expect(text(english, model.rig, fault)).toContain("plate");
  const walked = planted.map((one, index) => ({
    ...one,
    walked: walk({ rig, planted: [one.fault], slips: 0, random: seeded(index) }, "position 1"),
  }));
  const result = score(walked);
  console.log(`${rig.name}\n${table(walked)}\n${JSON.stringify(result)}`);
  expect(result.shown).toBe(result.count);
  expect(result.firstByWeight).toBeGreaterThanOrEqual(0.9);
}, 120_000);

test.runIf(installed() || process.env.CI !== undefined)("ngspice says the same of it", () => {
  const compared = compareAll(stretchCases(build(rig)), frequencies);
  console.log(simulated(rig.name, compared));
  expect(compared.filter(({ of }) => of === ("wall plate" as PartKind)).length).toBeGreaterThan(10);
  expect(beyond(compared)).toEqual([]);
});
