import { describe, expect, test } from "vitest";
import { headphones } from "#core/parts/headphones.ts";
import { relativeGains } from "#core/rig/ear-matrix.ts";
import { effectOf } from "#core/rig/effect.ts";
import { size } from "#core/units/complex.ts";
import { toDecibels } from "#core/units/decibels.ts";
import { expectPrinted, gains } from "#tests/reference/printed.ts";
import { faultsOf, heard, lost, seat, wornOn } from "./worn.ts";

const rig = wornOn("headphones");

test("the usual cord has the handbook's 0.252 ohms a conductor, and its contact of 0.05", () => {
  const tip = headphones.make().body.find(({ name }) => name === "tip");
  if (tip?.kind !== "resistor") throw new Error("the cord has no tip");
  expect(tip.ohms).toBeCloseTo(0.252 + 0.05, 2);
});

// Handbook, section 5 (C): what every row of its table starts from.
test("healthy on 10 ohms", () => expectPrinted(gains(heard(rig)), "+.746 -.008 -.008 +.746"));

// Handbook, section 2 (C).
test("10 m of AWG 28 into 32 ohms: -26 dB of crosstalk", () => {
  const [wanted = { re: 0, im: 0 }, other = { re: 0, im: 0 }] = heard(
    wornOn("headphones", { metres: 10, gauge: 28 }),
  ).flat();
  expectPrinted([toDecibels(size(other) / size(wanted))], "-26");
});

describe("four wires", () => {
  const four = wornOn("headphones", { wiring: "four wires" });

  test("the sides share no more than the plug: as loud, with less of one in the other", () => {
    const [three, apart] = [rig, four].map((one) => gains(heard(one)));
    expect(apart?.[0]).toBeCloseTo(three?.[0] ?? Number.NaN, 2);
    expect(Math.abs(apart?.[1] ?? 9)).toBeLessThan(0.4 * Math.abs(three?.[1] ?? 0));
  });

  test("one pair exchanged by whoever rebuilt the plug is the likelier", () => {
    const weight = (one: typeof rig) => faultsOf(one, "left driver inverted")[0]?.weight ?? 0;
    expect(weight(four)).toBeGreaterThan(weight(rig));
    expect(effectOf(relativeGains(four, seat, faultsOf(four, "left driver inverted")))).toBe(
      "one side inverted",
    );
  });
});

test("both drivers inverted: the healthy matrix with every sign turned, which cannot be heard", () => {
  for (const [at, gain] of gains(heard(rig, ["both drivers inverted"])).entries())
    expect(gain).toBeCloseTo(-(gains(heard(rig))[at] ?? Number.NaN), 12);
});

test("one side inverted and both inverted leave the other side inverted", () => {
  const both = gains(heard(rig, ["left driver dead", "both drivers inverted"]));
  expectPrinted(both, "0 0 0 -.746");
});

test.each([32, 250])("a weak driver of %i ohms is 6 to 8 dB down, the other as before", (ohms) => {
  const [left = 0, right = 0] = lost(wornOn("headphones", { ohms }), "left driver weak");
  expect(left).toBeLessThan(-6);
  expect(left).toBeGreaterThan(-8);
  expect(Math.abs(right)).toBeLessThan(0.1);
});

test("a shorted voice coil hangs on how strong the output is", () => {
  const onto = (ohms: number) =>
    lost(wornOn("headphones", {}, { "output ohms": ohms }), "right voice coil shorted")[1];
  // 4 Ω behind 10.75 Ω, against 32 Ω; and behind 1.75 Ω.
  expectPrinted([onto(10) ?? 0], "-8.9", 0.15);
  expectPrinted([onto(1) ?? 0], "-2.7", 0.15);
});
