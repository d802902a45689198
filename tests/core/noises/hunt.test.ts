import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { answersTo, type Noise, noises, type Trial, trialNames } from "#core/checks/noise.ts";
import { causeKey } from "#core/noises/cause.ts";
import { huntAt } from "#core/noises/hunt.ts";
import { cautionsFor, mendingMoves, remediesFor } from "#core/noises/remedy.ts";
import { soundsAs } from "#core/noises/sounds-as.ts";
import { worldsAt } from "#core/noises/worlds.ts";
import type { BuiltRig } from "#core/rig/rig.ts";
import { lastOf, noticed, startRigs } from "./simulated.ts";

const rooms = new Map(startRigs);
const room = (key: string): BuiltRig => {
  const rig = rooms.get(key);
  if (rig === undefined) throw new Error(`there is no start named ${key}`);
  return rig;
};
const rehearsal = room("rehearsal room");
const seat = lastOf(rehearsal);

describe("every cause and every trial", () => {
  const every = startRigs.flatMap(([name, rig]) =>
    noises.map((noise) => [name, noise, worldsAt(rig, lastOf(rig), noise)] as const),
  );

  test.each(every)("%s, %s: chances sum to one", (_, __, found) => {
    const { causes = [], trials = [] } = found ?? {};
    expect(causes.length).toBeGreaterThan(2);
    const worlds = causes.flatMap((one) => one.worlds);
    for (const trial of trials)
      for (const one of worlds)
        expect(
          one.meant(trial).reduce((sum, p) => sum + p, 0),
          `${causeKey(one.cause)}: ${trial.try}`,
        ).toBeCloseTo(1, 6);
  });

  test.each(every)("%s, %s: something helps against every cause on the list", (_, __, found) => {
    for (const { cause } of found?.causes ?? [])
      expect(remediesFor(cause).length > 0).toBe(cause.cause !== "something else");
  });

  test("each kind of trial is offered somewhere", () => {
    const offered = new Set(
      startRigs.flatMap(([, rig]) =>
        noises.flatMap((noise) => worldsAt(rig, lastOf(rig), noise)?.trials.map((one) => one.try)),
      ),
    );
    expect([...offered].toSorted()).toEqual(Object.keys(trialNames).toSorted());
  });
});

const said = (noise: Noise, trial: Trial, ...given: string[]) => noticed(seat, noise, trial, given);
const causesOf = (noise: Noise, ...findings: ReturnType<typeof noticed>[]) =>
  huntAt(rehearsal, seat, noise, findings)?.suspects[0]?.causes.map(({ cause }) => cause);

describe("what a knob tells", () => {
  const amplifier = { part: "amplifier", socket: "output 5" } as const;
  const mixer = { part: "mixer", socket: "monitor left" } as const;

  test("hiss that stays with the last knob down is the last box's own", () => {
    const still = said("hiss", { try: "knob down", ...amplifier }, "the same");
    expect(causesOf("hiss", still, still)).toEqual(["behind the last knob"]);
  });

  test("hiss that goes with the last knob, and stays with the mixer's, is behind the mixer's", () => {
    const causes = causesOf(
      "hiss",
      said("hiss", { try: "knob down", ...amplifier }, "gone"),
      said("hiss", { try: "knob down", ...mixer }, "the same"),
    );
    expect(causes).toContain("behind the knob");
  });

  test("hum that goes with the lead pulled, and from one outlet, is a loop: no earth is ever lifted", () => {
    const hunt = huntAt(rehearsal, seat, "hum", [
      said("hum", { try: "programme stopped" }, "the same"),
      said("hum", { try: "knob down", ...mixer }, "the same"),
      said("hum", { try: "feed out", part: "amplifier" }, "gone"),
      said("hum", { try: "other leads out" }, "the same"),
      said("hum", { try: "one outlet" }, "gone"),
    ]);
    const [cause] = hunt?.suspects[0]?.causes ?? [];
    expect(cause).toEqual({ cause: "ground loop", part: "amplifier" });
    if (cause) expect(cautionsFor(cause)).toContain("never lift a mains earth");
  });

  test("distortion that a quieter source cures is the input's, one that other headphones cure the driver's", () => {
    const studio = room("small studio");
    const at = lastOf(studio);
    const first = (trial: Trial, ...given: string[]) =>
      huntAt(studio, at, "distortion", [noticed(at, "distortion", trial, given)])?.suspects[0]
        ?.causes[0]?.cause;
    expect(first({ try: "quieter source" }, "gone")).toBe("input overloaded");
    expect(first({ try: "other headphones" }, "gone")).toBe("driver torn");
  });
});

test("the order of findings does not matter", () => {
  const { trials } = worldsAt(rehearsal, seat, "crackle") ?? { trials: [] };
  const one = fc
    .constantFrom(...trials)
    .chain((trial) =>
      fc.subarray([...answersTo(trial.try)]).map((given) => noticed(seat, "crackle", trial, given)),
    );
  fc.assert(
    fc.property(fc.array(one, { maxLength: 6 }), fc.infiniteStream(fc.nat()), (findings, keys) => {
      const shuffled = findings
        .map((finding) => ({ finding, key: keys.next().value ?? 0 }))
        .toSorted((a, b) => a.key - b.key)
        .map(({ finding }) => finding);
      const [a, b] = [findings, shuffled].map((some) => huntAt(rehearsal, seat, "crackle", some));
      const odds = (hunt: typeof a) =>
        new Map(
          hunt?.suspects.map((suspect) => [
            suspect.causes.map(causeKey).toSorted().join(),
            suspect.probability,
          ]),
        );
      for (const [key, probability] of odds(a))
        expect(odds(b).get(key)).toBeCloseTo(probability, 9);
    }),
    { numRuns: 40 },
  );
});

test("what cannot be tried is not asked again, and tells nothing", () => {
  const begun = huntAt(rehearsal, seat, "hum", []);
  const trial = begun?.next?.trial;
  if (trial === undefined) throw new Error("nothing to try");
  const cannot = huntAt(rehearsal, seat, "hum", [said("hum", trial)]);
  expect(cannot?.next?.trial).not.toEqual(trial);
  const total = (hunt: typeof begun) =>
    hunt?.suspects.reduce((sum, { probability }) => sum + probability, 0);
  expect(total(cannot)).toBeCloseTo(1, 9);
  expect(cannot?.suspects.at(0)?.probability).toBeGreaterThanOrEqual(
    begun?.suspects.at(0)?.probability ?? 1,
  );
});

test("in-ears are lent to nobody", () => {
  const trials = (noise: Noise) => worldsAt(rehearsal, seat, noise)?.trials.map((one) => one.try);
  expect(trials("distortion")).not.toContain("other headphones");
  expect(trials("crackle")).not.toContain("other headphones");
});

test("faults of left and right are pointed to, and not doubled", () => {
  const names = (noise: Noise) => soundsAs(rehearsal, seat, noise).map(({ name }) => name);
  expect(names("hiss")).toContain("pad in on the left channel");
  expect(names("crackle")).toContain("volume knob uneven, left weaker");
});

test("plugs that were cleaned and leads that were replaced are moves", () => {
  expect(mendingMoves(rehearsal, { cause: "plugs not clean", part: "feed lead" })).toHaveLength(3);
  expect(mendingMoves(rehearsal, { cause: "lead breaking", part: "feed lead" })).toEqual([
    { move: "replaced", place: "feed lead" },
  ]);
  expect(mendingMoves(rehearsal, { cause: "ground loop", part: "amplifier" })).toEqual([]);
});
