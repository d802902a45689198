import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { FaultName } from "#core/parts/fault-names.ts";
import { highPass, lowPass } from "#core/parts/first-order.ts";
import { inEars } from "#core/parts/in-ears.ts";
import { relativeGains } from "#core/rig/ear-matrix.ts";
import { type Effect, effectOf } from "#core/rig/effect.ts";
import { add, size } from "#core/units/complex.ts";
import { toDecibels } from "#core/units/decibels.ts";
import { faultsOf, heard, lost, seat, wornOn } from "./worn.ts";

const bands = [100, 1000, 10_000];
/** On an output that is nearly ideal and a thick cord, so that the crossover is all there is. */
const onIdeal = (drivers: string) =>
  wornOn("in-ears", { drivers, gauge: 16 }, { "output ohms": 0.1 });
const rig = onIdeal("two a side");

test("a low-pass and a high-pass of one corner add up to what came", () => {
  fc.assert(
    fc.property(fc.double({ min: 1, max: 1e5, noNaN: true }), fc.nat(20_000), (at, from) => {
      const { re, im } = add(lowPass(at, from), highPass(at, from));
      expect(re).toBeCloseTo(1, 12);
      expect(im).toBeCloseTo(0, 12);
    }),
  );
});

test.each(["one a side", "two a side"])(
  "healthy, %s: as loud in every band, sides apart",
  (drivers) => {
    const healthy = onIdeal(drivers);
    expect(inEars.make({ drivers }).takes).toHaveLength(drivers === "one a side" ? 2 : 4);
    for (const at of bands) {
      const [ll = 0, lr = 9, rl = 9, rr = 0] = heard(healthy, [], at).flat().map(size);
      expect(toDecibels(ll)).toBeGreaterThan(-1);
      expect(ll).toBeCloseTo(rr, 12);
      for (const other of [lr, rl]) expect(toDecibels(other / ll)).toBeLessThan(-25);
    }
  },
);

const effects: readonly (readonly [FaultName, Effect])[] = [
  ["left two-pin plug reversed", "one side inverted"],
  ["right two-pin plug reversed", "one side inverted"],
  ["left cable broken at the ear", "left gone"],
  ["right cable broken at the ear", "right gone"],
  ["earpieces exchanged", "swapped"],
  ["left pins dirty", "left weak"],
  ["right seal lost", "right weak"],
  ["wax on the left", "left weak"],
  ["sleeve open", "difference"],
];
test.each(effects)("%s: %s", (name, effect) => {
  expect(effectOf(relativeGains(rig, seat, faultsOf(rig, name)))).toBe(effect);
});

describe("what hangs on the band", () => {
  // First order with a corner at 1200 Hz: 1 / sqrt(1 + (1200 / f)²), by hand.
  test.each([
    [100, -21.61],
    [1000, -3.87],
    [10_000, -0.06],
  ])("a lost seal at %i Hz: %f dB, and the other ear as before", (at, printed) => {
    const [left, right] = lost(rig, "left seal lost", at);
    expect(left).toBeCloseTo(printed, 2);
    expect(right).toBeCloseTo(0, 9);
    expect(lost(rig, "both seals lost", at)[1]).toBeCloseTo(printed, 2);
  });

  test.each(bands)("wax takes 10 dB at %i Hz", (at) => {
    expect(lost(rig, "wax on the right", at)[1]).toBeCloseTo(-10, 9);
  });

  test("without its low driver a side is thin, without its high one dull", () => {
    const [low, high] = ["left low driver dead", "left high driver dead"] as const;
    expect(lost(rig, low, 100)[0]).toBeLessThan(-20);
    expect(lost(rig, low, 10_000)[0]).toBeGreaterThan(-1);
    expect(lost(rig, high, 100)[0]).toBeGreaterThan(-0.5);
    expect(lost(rig, high, 10_000)[0]).toBeLessThan(-12);
  });

  test("each half of a pair has lost half its power at the corner that ohms and farads make", () => {
    const [ohms, crossover] = [300, 2e-7];
    const high = wornOn("in-ears", { ohms, crossover }, { "output ohms": 0.1 });
    const corner = 1 / (2 * Math.PI * ohms * crossover);
    for (const name of ["left low driver dead", "left high driver dead"] as const)
      expect(lost(high, name, corner)[0]).toBeCloseTo(-3.01, 1);
  });
});

test("a high output bends what two drivers a side get, and leaves one a side alone", () => {
  const bend = (drivers: string) => {
    const [low = 0, high = 0] = [100, 10_000].map((at) =>
      size(
        heard(wornOn("in-ears", { drivers }, { "output ohms": 50 }), [], at)[0]?.[0] ?? {
          re: 0,
          im: 0,
        },
      ),
    );
    return toDecibels(high / low);
  };
  expect(bend("one a side")).toBeCloseTo(0, 9);
  expect(bend("two a side")).toBeLessThan(-3);
});
