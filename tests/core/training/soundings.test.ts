import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { relativeGains } from "#core/rig/ear-matrix.ts";
import { effectOf } from "#core/rig/effect.ts";
import { build, type Rig } from "#core/rig/rig.ts";
import { rigFaults } from "#core/rig/rig-faults.ts";
import { builtInRigs, straightIn } from "#core/rig/rigs.ts";
import { alike, soundingsAt, toldApart } from "#core/training/soundings.ts";
import { fromDecibels } from "#core/units/decibels.ts";
import { groupedBy } from "#core/units/grouped.ts";

const seat = "position 1";

describe.each(builtInRigs.map((rig) => [rig.name, rig] as const))("%s", (_, drawn: Rig) => {
  const rig = build(drawn);
  const soundings = soundingsAt(rig, seat);

  test("each audible fault of the gear is in one sounding, and nothing else is", () => {
    const audible = rigFaults(rig).filter(
      (fault) =>
        (rig.part(fault.part).family !== "person" || fault.name === "worn backwards") &&
        fault.comesAndGoes !== true &&
        effectOf(relativeGains(rig, seat, [fault])) !== "straight",
    );
    const held = soundings.flatMap(({ faults }) => faults.map(({ id }) => id));
    expect(held.toSorted()).toEqual(audible.map(({ id }) => id).toSorted());
  });

  test("no fault of one sounds like a fault of another", () => {
    const all = soundings.flatMap(({ id, late, faults }) =>
      faults.map((fault) => ({ id, late, gains: relativeGains(rig, seat, [fault]) })),
    );
    for (const a of all)
      for (const b of all) if (a.id !== b.id) expect(alike(a, b), `${a.id}, ${b.id}`).toBe(false);
  });

  test("each is filed under its likeliest fault, and says what that does", () => {
    for (const { id, effect, gains, faults } of soundings) {
      expect(faults[0].id).toBe(id);
      expect(Math.max(...faults.map(({ weight }) => weight))).toBe(faults[0].weight);
      expect(gains).toEqual(relativeGains(rig, seat, [faults[0]]));
      expect(effectOf(gains)).toBe(effect);
    }
    expect(new Set(soundings.map(({ id }) => id)).size).toBe(soundings.length);
  });
});

describe("straight into a laptop", () => {
  const rig = build(straightIn);
  const soundings = soundingsAt(rig, seat);
  const withFault = (name: string) =>
    soundings.find(({ faults }) => faults.some((fault) => fault.name === name));

  test.each([
    ["tip open", "left driver dead"],
    ["sleeve open", "not home, return off"],
    ["left driver inverted", "right driver inverted"],
    ["tip and ring exchanged", "worn backwards"],
  ])("%s and %s are one", (one, other) => {
    expect(withFault(one)).toBeDefined();
    expect(withFault(one)).toBe(withFault(other));
  });

  test.each([
    ["tip open", "ring open"],
    ["sleeve open", "return of 10 ohms"],
    ["balance off to the left", "balance far to the left"],
    ["tip and sleeve exchanged", "ring and sleeve exchanged"],
  ])("%s and %s are two", (one, other) => {
    expect(withFault(one)).not.toBe(withFault(other));
  });

  test.each(["both drivers inverted", "return of 3 ohms", "mirrors left and right"])(
    "%s is not asked: nobody hears it",
    (name) => expect(withFault(name)).toBeUndefined(),
  );

  test.each(["left ear hears less", "right ear hears less"])("%s is not asked: no ear is", (name) =>
    expect(withFault(name)).toBeUndefined(),
  );
});

test("a side that comes late is something to hear, though no gain shows it", () => {
  const rig = build(straightIn);
  const laptop = rig.part("laptop");
  const fault = laptop.faults.find(({ name }) => name === "mono");
  if (fault === undefined) throw new Error("a laptop has no mono");
  const delayed = {
    ...laptop,
    controls: { ...laptop.controls, delay: 0 },
    late: (control: (name: string) => number) => control("delay"),
    faults: [
      ...laptop.faults,
      {
        ...fault,
        name: "something not on the list" as const,
        edits: [{ edit: "control" as const, control: "delay", value: 0.001 }],
      },
    ],
  };
  const soundings = soundingsAt(
    { ...rig, part: (id) => (id === "laptop" ? delayed : rig.part(id)) },
    seat,
  );
  const late = soundings.filter((one) => one.late !== 0);
  expect(late.map(({ effect, late: by }) => [effect, by])).toEqual([["straight", 0.001]]);
});

const gain = fc
  .tuple(fc.double({ min: -40, max: 0, noNaN: true }), fc.constantFrom(1, -1))
  .map(([level, sign]) => sign * fromDecibels(level));
const heard = fc
  .tuple(gain, gain, gain, gain)
  .map((gains) => ({ gains: gains as [number, number, number, number], late: 0 }));

test("alike is the same both ways round, and nothing is alike that is told apart", () => {
  fc.assert(
    fc.property(heard, heard, (a, b) => {
      expect(alike(a, b)).toBe(alike(b, a));
      expect(alike(a, b) && toldApart(a, b)).toBe(false);
      expect(alike(a, a)).toBe(true);
    }),
  );
});

test("a decibel is alike, and more is not; upside down is alike", () => {
  const by = (level: number) => ({ gains: [1, 0, 0, fromDecibels(level)] as const, late: 0 });
  const turned = { gains: [-1, 0, 0, -1] as const, late: 0 };
  expect(alike(by(0), by(-0.99))).toBe(true);
  expect(alike(by(0), by(-1.01))).toBe(false);
  expect(alike(by(0), turned)).toBe(true);
  expect(alike(by(-30), by(-60))).toBe(true);
});

test("groups are the connected parts, whatever the order", () => {
  fc.assert(
    fc.property(fc.uniqueArray(fc.integer({ min: 0, max: 60 })), (all) => {
      const groups = groupedBy(all, (a, b) => Math.abs(a - b) <= 1);
      expect(groups.flat().toSorted()).toEqual(all.toSorted());
      const sorted = all.toSorted((a, b) => a - b);
      const gaps = sorted.filter((one, at) => at === 0 || one - (sorted[at - 1] ?? 0) > 1);
      expect(groups).toHaveLength(gaps.length);
    }),
  );
});
