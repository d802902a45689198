import { expect, test } from "vitest";
import { earMatrix } from "#core/rig/ear-matrix.ts";
import { earsAt } from "#core/rig/ears-at.ts";
import { build, type Rig } from "#core/rig/rig.ts";
import { rigFaults } from "#core/rig/rig-faults.ts";
import { straightIn } from "#core/rig/rigs.ts";

const personal: Rig = {
  ...straightIn,
  parts: [
    { id: "laptop", kind: "personal mixer" },
    { id: "headphones 1", kind: "headphones" },
  ],
};

test("at any frequency the same as the ear matrix, where nothing comes late", () => {
  const rig = build(straightIn);
  for (const fault of rigFaults(rig))
    for (const at of [100, 1000, 10_000])
      expect(earsAt(rig, "position 1", [fault])(at), fault.id).toEqual(
        earMatrix(rig, "position 1", [fault], at),
      );
});

test("a side that is 1 ms late is half a turn behind at 500 Hz and a whole one at 1 kHz", () => {
  const rig = build(personal);
  const late = rigFaults(rig).find(({ name }) => name === "right side 1 ms late");
  if (late === undefined) throw new Error("the personal mixer has no late side");
  const at = earsAt(rig, "position 1", [late]);
  const own = (hertz: number, ear: number) => at(hertz)[ear]?.[ear]?.re ?? 0;
  expect(own(500, 1) / own(500, 0)).toBeCloseTo(-1, 6);
  expect(own(1000, 1) / own(1000, 0)).toBeCloseTo(1, 6);
});
