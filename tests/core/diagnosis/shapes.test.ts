import { expect, test } from "vitest";
import { createPool } from "#core/diagnosis/pool.ts";
import { type Op, waysOf } from "#core/diagnosis/ways.ts";
import { straight } from "#core/rig/behaviour.ts";
import { midband } from "#core/rig/midband.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import { type Step, stepsTo } from "#core/rig/steps.ts";
import { seeded } from "#core/units/random.ts";
import { rigOf } from "#tests/bench/rigs.ts";

/** Every fault alone, and some two together. */
function faultsOf({ faults }: Op, random: () => number): readonly (readonly RigFault[])[] {
  const all = [...faults.keys()].filter(({ comesAndGoes }) => !comesAndGoes);
  const one = () => all[Math.floor(random() * all.length)];
  const pairs = all.flatMap(() => {
    const [first, second] = [one(), one()];
    return first && second && first !== second ? [[first, second]] : [];
  });
  return [...all.map((fault) => [fault]), ...pairs];
}

test.each([1, 2, 3, 4, 5, 6, 7, 8, 9, 10])(
  "steps that share their numbers since their shape is the same do the same: rig %i",
  (seed) => {
    const random = seeded(seed);
    const pool = createPool();
    const { rig, to } = waysOf(rigOf(seed, 6), pool, new Map(), new Map());
    const solved = ({ behaviour, branch }: Step, position: string, faults: readonly RigFault[]) =>
      pool.number({ ...straight, ...behaviour(faults, branch(position), midband) });
    for (const { id } of rig.positions) {
      const steps = stepsTo(rig, id);
      const ops = to(id);
      expect(ops).toHaveLength(steps.length);
      for (const [at, op] of ops.entries())
        for (const faults of faultsOf(op, random))
          expect(op.read(faults), faults.map((one) => one.id).join(" and ")).toBe(
            solved(steps[at] as Step, id, faults),
          );
    }
  },
);
