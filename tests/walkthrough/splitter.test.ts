import { expect, test } from "vitest";
import { isUnlisted } from "#core/diagnosis/fault-sets.ts";
import type { Connection, Rig, RigPart } from "#core/rig/rig.ts";
import { modelFor } from "#core/session/derive.ts";
import { seeded } from "#core/units/random.ts";
import { everyOther } from "#tests/support/long.ts";
import { score, table } from "./score.ts";
import { walk } from "./walk.ts";

const sets = ["headphones 1", "headphones 2", "headphones 3"];

/** Three sets on one splitter with no amplifier between: one circuit, in which a fault of one set is heard in the others. */
const rig: Rig = {
  name: "three on a splitter",
  parts: [
    { id: "laptop", kind: "laptop" },
    { id: "splitter", kind: "splitter", settings: { sets: 3 } },
    ...sets.map((id): RigPart => ({ id, kind: "headphones" })),
  ],
  plugged: [
    { part: "splitter", plug: "plug", into: "laptop", socket: "phones" },
    ...sets.map(
      (id, index): Connection => ({
        part: id,
        plug: "plug",
        into: "splitter",
        socket: `output ${index + 1}`,
      }),
    ),
  ],
  positions: sets.map((wears, index) => ({
    id: `position ${index + 1}`,
    name: `${index + 1}`,
    wears,
  })),
};

test("faults of sets that share one circuit are found, by what their neighbours hear too", {
  timeout: 300_000,
}, () => {
  const { groups, model } = modelFor(rig);
  expect(model.root.positions).toHaveLength(3);
  const planted = groups
    .filter(({ inaudible }) => !inaudible)
    .flatMap((group) =>
      group.faults
        .filter((fault) => !isUnlisted(fault) && !fault.comesAndGoes)
        .filter(({ part, at }) => !/[13]/.test(`${part} ${at}`))
        .map((fault) => ({ fault, group, position: "position 2" })),
    );
  const walked = everyOther(planted, 18).map((one, index) => ({
    ...one,
    walked: walk({ rig, planted: [one.fault], slips: 0, random: seeded(index) }, one.position),
  }));
  const result = score(walked);
  console.log(`${rig.name}\n${table(walked)}\n${JSON.stringify(result)}`);
  expect(result.shown / result.count).toBeGreaterThanOrEqual(0.9);
  expect(result.firstByWeight).toBeGreaterThanOrEqual(0.97);
});
