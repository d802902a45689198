import { describe, expect, test } from "vitest";
import { earMatrix } from "#core/rig/ear-matrix.ts";
import { type Effect, effectOf, effects, signed } from "#core/rig/effect.ts";
import { build } from "#core/rig/rig.ts";
import { rigFaults } from "#core/rig/rig-faults.ts";
import { fromHeadphoneSocket } from "#core/rig/rigs.ts";
import { size } from "#core/units/complex.ts";

/** What each row of the handbook's first table (section 5) and of its plugs (section 2) is called in a picture. */
const pictured: readonly (readonly [string, Effect])[] = [
  ["headphones 1 / body / tip open", "left gone"],
  ["headphones 1 / body / ring open", "right gone"],
  ["headphones 1 / body / sleeve open", "difference"],
  ["headphones 1 / body / tip and ring shorted", "mono"],
  ["headphones 1 / body / tip and ring exchanged", "swapped"],
  ["headphones 1 / body / left driver inverted", "one side inverted"],
  ["headphones 1 / body / right driver inverted", "one side inverted"],
  ["headphones 1 / body / tip and sleeve exchanged", "mixed"],
  ["headphones 1 / plug / not home, ring on the insulator", "right gone"],
  ["headphones 1 / plug / not home, both on the tip", "all in the left ear"],
  ["feed lead / far / not home, both on the tip", "left in both"],
  ["position 1: listener / settings / worn backwards", "swapped"],
  ["laptop / settings / balance off to the left", "right weak"],
  ["laptop / settings / volume down", "nothing"],
  ["mixer / settings / mono", "mono"],
];

describe("a fault as a picture has it", () => {
  const rig = build(fromHeadphoneSocket("one seat", ["one"]));
  const faults = rigFaults(rig);
  const healthy = earMatrix(rig, "position 1", []);
  const largest = Math.max(...healthy.flat().map(size));

  test("no fault is straight", () => {
    expect(effectOf(signed(healthy, largest))).toBe("straight");
  });

  test.each(pictured)("%s: %s", (id, effect) => {
    const fault = faults.find((one) => one.id === id);
    if (fault === undefined) throw new Error(`the rig cannot have the fault ${id}`);
    expect(effectOf(signed(earMatrix(rig, "position 1", [fault]), largest))).toBe(effect);
  });
});

test("every effect but the mixed one is the effect of some four gains", () => {
  const values = [-1, 0, 0.5, 1];
  const found = new Set(
    values.flatMap((ll) =>
      values.flatMap((lr) =>
        values.flatMap((rl) => values.map((rr) => effectOf([ll, lr, rl, rr]))),
      ),
    ),
  );
  expect(found).toEqual(new Set(effects));
});
