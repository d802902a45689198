import { expect, test } from "vitest";
import { hissOf, withKnobs } from "#core/level/advice.ts";
import { atEars } from "#core/level/at-ears.ts";
import { type Feed, usualProgramme } from "#core/level/stages.ts";
import { betweenOf, likelyGear } from "#core/noises/sharpened.ts";
import { worldsAt } from "#core/noises/worlds.ts";
import { build } from "#core/rig/rig.ts";
import { fromHeadphoneSocket } from "#core/rig/rigs.ts";
import { seeded } from "#core/units/random.ts";
import { drawnOne, hunted, listedWorlds, listenerIn, noticed } from "./simulated.ts";

const rig = build(fromHeadphoneSocket("three boxes", ["host", "guest"]));
const position = "position 1";
const hiss = (gear: Feed) => hissOf(atEars(gear, usualProgramme));

test("without an answer nothing is sharpened", () => {
  expect(likelyGear(rig, position, [])).toEqual([]);
});

test("each answer sharpens the estimate, and what it is lies inside as often as it says", () => {
  const random = seeded(5);
  const worlds = worldsAt(rig, position, "hiss")?.causes.flatMap((one) => one.worlds) ?? [];
  const before = betweenOf(
    worlds.flatMap(({ gear, weight }) => (gear ? [{ gear, weight }] : [])),
    hiss,
  );
  const all = Array.from({ length: 120 }, () => {
    const world = drawnOne(listedWorlds(rig, position, "hiss"), random);
    const { findings } = hunted(rig, position, "hiss", listenerIn(world, random));
    const { low, high } = betweenOf(likelyGear(rig, position, findings), hiss);
    const own = world.gear ? hiss(world.gear) : Number.NaN;
    return { width: high - low, inside: own >= low && own <= high };
  });
  const mean = (some: readonly number[]) => some.reduce((sum, one) => sum + one, 0) / some.length;
  expect(mean(all.map(({ width }) => width))).toBeLessThan(0.92 * (before.high - before.low));
  const inside = mean(all.map((one) => Number(one.inside)));
  expect(inside).toBeGreaterThan(0.7);
  expect(inside).toBeLessThan(0.92);
});

test("what a knob did once it is expected to do again", () => {
  const knob = { try: "knob down", part: "amplifier", socket: "output 1" } as const;
  const down = (gear: Feed) =>
    hiss(gear) -
    hiss(
      withKnobs(
        gear,
        gear.stages.map(({ part, knob: up }) => (part === "amplifier" ? 0 : up)),
      ),
    );
  const after = (answer: string) =>
    betweenOf(likelyGear(rig, position, [noticed(position, "hiss", knob, [answer])]), down).value;
  expect(after("gone")).toBeGreaterThan(after("the same") + 3);
  expect(after("the same")).toBeLessThan(2);
});
