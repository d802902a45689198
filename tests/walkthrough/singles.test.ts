import { expect, test } from "vitest";
import { isUnlisted } from "#core/diagnosis/fault-sets.ts";
import type { Group } from "#core/diagnosis/groups.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import { builtInRigs } from "#core/rig/rigs.ts";
import { modelFor } from "#core/session/derive.ts";
import { seeded } from "#core/units/random.ts";
import type { Recording } from "#tests/robot/ears.ts";
import { everyOther } from "#tests/support/long.ts";
import { score, table } from "./score.ts";
import { drawn, walk } from "./walk.ts";
import type { World } from "./world.ts";

const [table5] = builtInRigs;
if (table5 === undefined) throw new Error("there is no built-in rig");

interface Planted {
  readonly fault: RigFault;
  readonly group: Group;
  readonly position: string;
}

/** Every single fault that can be heard, at the first position it reaches; those of the first `branches` branches. */
function singles(rig: World["rig"], branches = Number.POSITIVE_INFINITY): Planted[] {
  const { groups, model } = modelFor(rig);
  const some = model.branches.slice(0, branches);
  return groups
    .filter(({ inaudible, branch }) => !inaudible && some.includes(branch))
    .flatMap((group) =>
      group.faults
        .filter((fault) => !isUnlisted(fault) && !fault.comesAndGoes)
        .map((fault) => ({ fault, group, position: group.branch.positions[0] ?? "" })),
    );
}

const walked = (
  planted: readonly Planted[],
  rig: World["rig"],
  slips: number,
  seed: number,
  spoilt?: World["spoilt"],
) =>
  planted.map(({ fault, group, position }, index) => ({
    fault,
    group,
    walked: walk(
      { rig, planted: [fault], slips, random: seeded(seed + index), ...(spoilt ? { spoilt } : {}) },
      position,
    ),
  }));

test.for(builtInRigs)(
  "every single fault is found, without slips: $name",
  { timeout: 120_000 },
  (rig) => {
    const every = rig.positions.length > 1 ? 7 : 4;
    const some = everyOther(singles(rig, 2), every);
    const found = walked(some, rig, 0, 1);
    const result = score(found);
    console.log(`${rig.name}\n${table(found)}\n${JSON.stringify(result)}`);
    expect(result.shown).toBe(result.count);
    expect(result.firstByWeight).toBeGreaterThanOrEqual(0.98);
    // By count the mild ones weigh most: 30 Ω in one side is told from an ear that hears less by nothing but odds.
    expect(result.firstByCount).toBeGreaterThanOrEqual(0.85);
    // Checks and moves, until it is mended or named.
    expect(result.checksByWeight).toBeLessThanOrEqual(7.5);
    expect(result.secondsByWeight).toBeLessThanOrEqual(85); // with what was heard after every move
  },
);

test("with five in a hundred answers slipped", { timeout: 300_000 }, () => {
  const result = score(walked(everyOther(singles(table5, 2).slice(1), 12), table5, 0.05, 1000));
  console.log(`5 % slips: ${JSON.stringify(result)}`);
  expect(result.firstByWeight).toBeGreaterThanOrEqual(0.95);
});

test("a healthy rig, position after position", () => {
  let log = drawn(table5);
  const checks = table5.positions.map(({ id }) => {
    const end = walk({ rig: table5, planted: [], slips: 0, random: seeded(5) }, id, log);
    expect(end.end).toBe("healthy");
    log = end.log;
    return end.checks;
  });
  const mean = checks.reduce((sum, one) => sum + one, 0) / checks.length;
  console.log(`healthy positions: ${checks.join(", ")} checks, ${mean.toFixed(2)} on average`);
  expect(mean).toBeLessThanOrEqual(3.3);
});

/** Controls: with these the same scores must not be reached. */
const controls: Readonly<Record<string, (recording: Recording) => Recording>> = {
  "a deaf person": ({ left, right, rate }) => ({
    left: left.map(() => 0),
    right: right.map(() => 0),
    rate,
  }),
  "a person with the ears exchanged": ({ left, right, rate }) => ({
    left: right,
    right: left,
    rate,
  }),
  "an output cut to mono": ({ left, right, rate }) => {
    const sum = left.map((sample, at) => (sample + (right[at] ?? 0)) / 2);
    return { left: sum, right: sum, rate };
  },
};

test.for(Object.entries(controls))("control: %s must fail", { timeout: 120_000 }, ([, spoilt]) => {
  const some = singles(table5, 2).filter((_, index) => index % 40 === 0);
  const result = score(walked(some, table5, 0, 1, spoilt));
  expect(result.firstByWeight).toBeLessThan(0.5);
  const healthy = walk(
    { rig: table5, planted: [], slips: 0, random: seeded(1), spoilt },
    "position 1",
  );
  expect(healthy.end).not.toBe("healthy");
});
