import { expect, test } from "vitest";
import { isUnlisted } from "#core/diagnosis/fault-sets.ts";
import type { Group } from "#core/diagnosis/groups.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import { builtInRigs } from "#core/rig/rigs.ts";
import { modelFor } from "#core/session/derive.ts";
import { seeded } from "#core/units/random.ts";
import { long } from "#tests/support/long.ts";
import { walk } from "./walk.ts";

const [rig] = builtInRigs;
if (rig === undefined) throw new Error("there is no built-in rig");
const { model, groups } = modelFor(rig);

interface Listed {
  readonly fault: RigFault;
  readonly group: Group;
}

const listed: readonly Listed[] = groups
  .filter(({ inaudible, branch }) => !inaudible && branch.positions.includes("position 1"))
  .flatMap((group) =>
    group.faults.filter((fault) => !isUnlisted(fault)).map((fault) => ({ fault, group })),
  );

/** A fault drawn by its odds. */
function draw(random: () => number): Listed {
  let left = random() * listed.reduce((sum, { fault }) => sum + fault.weight, 0);
  const found = listed.find(({ fault }) => {
    left -= fault.weight;
    return left < 0;
  });
  if (found === undefined) throw new Error("nothing was drawn");
  return found;
}

/** Neither hides the other, and they do not cancel. */
function bothHeard(a: Listed, b: Listed): boolean {
  const way = model.under("position 1", [a.fault, b.fault]);
  const alone = [a, b].map(({ fault }) => model.under("position 1", [fault]));
  return [...alone, model.healthy("position 1")].every((one) => {
    const stand = model.standFor("position 1");
    return stand(one) !== stand(way);
  });
}

test("two faults at once: one of them is found first", { timeout: 120_000 }, () => {
  const random = seeded(11);
  const pairs: (readonly [Listed, Listed])[] = [];
  while (pairs.length < (long ? 60 : 16)) {
    const [a, b] = [draw(random), draw(random)];
    if (a.group !== b.group && bothHeard(a, b)) pairs.push([a, b]);
  }
  const results = pairs.map(([a, b], index) => {
    const walked = walk(
      { rig, planted: [a.fault, b.fault], slips: 0, random: seeded(index) },
      "position 1",
    );
    const { suspects } = walked.derived.standing("position 1");
    const at = ({ fault }: Listed) =>
      suspects.findIndex(({ group }) => group.faults.includes(fault));
    return {
      found: walked.mended || Math.min(at(a), at(b)) === 0,
      both: Math.max(at(a), at(b)) < 6 || (walked.mended && walked.end === "healthy"),
      ids: `${a.fault.id} + ${b.fault.id}`,
    };
  });
  const found = results.filter((one) => one.found);
  for (const { ids } of results.filter((one) => !one.found)) console.log(`missed: ${ids}`);
  console.log(
    `${found.length} of ${results.length} pairs have one first; in ${results.filter(({ both }) => both).length} both are among the first six`,
  );
  expect(found.length / results.length).toBeGreaterThanOrEqual(0.85);
});
