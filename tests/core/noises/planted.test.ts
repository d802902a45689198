import { describe, expect, test } from "vitest";
import { noises } from "#core/checks/noise.ts";
import { seeded } from "#core/units/random.ts";
import {
  drawnOne,
  hunted,
  isNamedFirst,
  lastOf,
  listedWorlds,
  listenerIn,
  startRigs,
} from "./simulated.ts";

describe("a planted cause, in every start rig, with 5 % slips", () => {
  const each = 24;
  const walked = noises.map((noise) => {
    const random = seeded(11);
    const hunts = startRigs.flatMap(([, rig]) =>
      Array.from({ length: each }, () => {
        const position = lastOf(rig);
        const world = drawnOne(listedWorlds(rig, position, noise), random);
        const { hunt, findings } = hunted(rig, position, noise, listenerIn(world, random));
        const said = hunt.suspects[0]?.probability ?? 0;
        return {
          said,
          right: isNamedFirst(hunt, world.cause),
          sure: hunt.sure,
          asked: findings.length,
        };
      }),
    );
    return [noise, hunts] as const;
  });
  const all = walked.flatMap(([, hunts]) => hunts);
  const mean = (some: readonly number[]) => some.reduce((sum, one) => sum + one, 0) / some.length;

  test("is named first, or its group, nine times in ten", () => {
    expect(mean(all.map(({ right }) => Number(right)))).toBeGreaterThanOrEqual(0.9);
  });

  test.each(walked)("%s: mostly, within a dozen trials", (_, hunts) => {
    expect(mean(hunts.map(({ right }) => Number(right)))).toBeGreaterThan(0.82);
    expect(mean(hunts.map(({ asked }) => asked))).toBeLessThan(12);
  });

  test("what is said to be so likely is right so often", () => {
    const gap = mean(all.map(({ said }) => said)) - mean(all.map(({ right }) => Number(right)));
    expect(Math.abs(gap)).toBeLessThan(0.04);
    const sure = all.filter((one) => one.sure);
    expect(sure.length).toBeGreaterThan(all.length / 2);
    expect(mean(sure.map(({ right }) => Number(right)))).toBeGreaterThan(0.9);
  });
});
