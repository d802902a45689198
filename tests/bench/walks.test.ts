import { expect, test } from "vitest";
import { alternativesOf, calibrationOf, scoresOf } from "./scores.ts";
import { type Batch, walksOf } from "./seeded-walks.ts";
import { scoresTable } from "./tables.ts";

/** The short form of `npm run soak`: small rigs of every kind, few walks, bounds as wide as chance makes so few. */
const short = { positions: 6, slips: 0.05, alternatives: false } as const;
const timeout = 600_000;

function walks(name: string, count: number, batch: Batch) {
  const some = [...walksOf(batch, 0, count)];
  console.log(scoresTable([[name, scoresOf(some)]]));
  return some;
}

/** What a share may come to by chance in so many walks where it is truly so large: two standard deviations less. */
const byChance = (share: number, walked: number): number =>
  share - 2 * Math.sqrt((share * (1 - share)) / walked);

test("one fault: its group is first, in half a checklist's time", { timeout }, () => {
  const some = walks("one fault", 24, { ...short, plant: "single", alternatives: true });
  const { first, lost, works, toWorking } = scoresOf(some);
  const { listToWorking } = alternativesOf(some);
  expect(first).toBeGreaterThanOrEqual(byChance(0.97, some.length));
  expect(lost).toBe(0);
  expect(works).toBeGreaterThanOrEqual(byChance(0.97, some.length));
  // From the first sound to a rig that works, either way: to its verdict alone the program now hears after every move, and is slower.
  expect(toWorking).toBeLessThanOrEqual(listToWorking / 2);
});

test("two faults: one of them is first", { timeout }, () => {
  const some = walks("two", 12, { ...short, plant: "double" });
  const { first, shown } = scoresOf(some);
  expect(first).toBeGreaterThanOrEqual(byChance(0.9, some.length));
  expect(shown).toBeGreaterThanOrEqual(byChance(0.9, some.length));
});

test("a healthy position is called healthy", { timeout }, () => {
  const { healthy } = scoresOf(walks("nothing", 10, { ...short, plant: "nothing" }));
  expect(healthy).toBeGreaterThanOrEqual(0.95);
});

test("what is stated is about as often true", { timeout }, () => {
  const some = walks("by odds", 40, { ...short, plant: "by odds" });
  const { gap, byChance } = calibrationOf(some);
  console.log(`gap ${gap.toFixed(3)}, of that ${byChance.toFixed(3)} by chance`);
  expect(gap).toBeLessThan(0.03 + 2 * byChance);
});

/** The control: answers that say nothing must not find anything but by luck. */
test("control: somebody who presses anything", { timeout }, () => {
  const { first } = scoresOf(
    walks("pressed at random", 10, { ...short, plant: "single", slips: 1 }),
  );
  expect(first).toBeLessThan(0.6);
});

test("a walk depends on its seed alone", { timeout }, () => {
  const batch = { ...short, plant: "single" } as const;
  const [all, last] = [walksOf(batch, 0, 3), walksOf(batch, 2, 3)].map((some) => [...some]);
  expect(all?.at(-1)).toEqual(last?.at(-1));
});
