import { describe, expect, test } from "vitest";
import { mainsEarth } from "#core/parts/boxes.ts";
import { solved } from "#core/rig/circuit-step.ts";
import { straightIn } from "#core/rig/rigs.ts";
import { size } from "#core/units/complex.ts";
import { toDecibels } from "#core/units/decibels.ts";
import type { Matrix } from "#core/units/matrix.ts";
import type { Ohms } from "#core/units/units.ts";
import { both, changedRig, faultOf, onEarthBy, withOhms } from "./changed-rig.ts";
import { expectPrinted, gains } from "./printed.ts";
import { laptopIntoAmplifier } from "./small-rigs.ts";

/** Handbook, section 2 (C): computed by nodal analysis in a SPICE simulator. */
describe("a plug that is not home", () => {
  const set = "headphones 1";
  const phones = changedRig(straightIn, {});
  const line = changedRig(laptopIntoAmplifier, {
    laptop: both(withOhms({ "phones tip": 22, "phones ring": 22 }), onEarthBy(mainsEarth())),
    amplifier: onEarthBy(mainsEarth()),
  });

  test.each([
    ["not home, ring on the insulator", "+.746 0 0 0"],
    ["not home, both on the tip", "+.422 +.422 0 0"],
    ["not home, first click", "0 +.746 0 0"],
    ["not home, sleeve on the ring", "0 +.427 0 -.427"],
    ["not home, return off", "+.377 -.377 -.377 +.377"],
  ])("headphones at a socket: %s", (name, printed) => {
    const fault = faultOf(phones, `${set} / plug / ${name}`);
    expectPrinted(gains(solved(phones, set, [fault])), printed);
  });

  test.each([
    ["not home, ring on the insulator", "+.998 0 0 0"],
    ["not home, both on the tip", "+.996 0 +.996 0"],
    ["not home, first click", "0 0 +.998 0"],
  ])("a lead at an amplifier's input: %s", (name, printed) => {
    const fault = faultOf(line, `lead / far / ${name}`);
    expectPrinted(gains(solved(line, "amplifier", [fault])), printed);
  });
});

/** The level of what is in both sides, at the left ear. */
const middle = (matrix: Matrix) =>
  toDecibels(Math.abs((gains(matrix)[0] ?? 0) + (gains(matrix)[1] ?? 0)));
const withCord = (cord: Readonly<Record<string, Ohms>>) =>
  solved(changedRig(straightIn, { "headphones 1": withOhms(cord) }), "headphones 1", []);

// Handbook, section 2 (C). It names no source: 10 ohm and 32 ohm headphones fit, against the same set when healthy.
test.each([
  [300, "-23"],
  [600, "-29"],
  [1500, "-37"],
  [2200, "-40"],
])("a return of %i ohms leaves the middle at %s dB", (ohms, printed) => {
  expectPrinted([middle(withCord({ sleeve: ohms })) - middle(withCord({}))], printed);
});

/** Ohms a metre of AWG 28, facts, section 8 (C). */
const awg28: Ohms = 0.2129;
const lead = (metres: number) => {
  const [tip, ring, sleeve] = [metres * awg28, metres * awg28, metres * awg28];
  return withCord({ tip, ring, sleeve });
};

// Handbook, section 2 (C). It names no source: 10 ohm fits, with crosstalk against the wanted side and loss against 3 m.
test("10 m of AWG 28 into 32 ohms: -26 dB of crosstalk, 0.6 dB lost", () => {
  const [long, short] = [lead(10), lead(3)].map((matrix) =>
    matrix.map(([fromLeft]) => toDecibels(size(fromLeft ?? { re: 0, im: 0 }))),
  );
  const [[wanted = 0, other = 0] = [], [before = 0] = []] = [long, short];
  expectPrinted([other - wanted, wanted - before], "-26 -0.6");
  expect(gains(lead(10))[2]).toBeLessThan(0);
});
