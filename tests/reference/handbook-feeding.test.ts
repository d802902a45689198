import { describe, expect, test } from "vitest";
import { mainsEarth } from "#core/parts/boxes.ts";
import { solved } from "#core/rig/circuit-step.ts";
import type { Rig } from "#core/rig/rig.ts";
import type { Matrix } from "#core/units/matrix.ts";
import { changedRig, faultOf, onEarthBy } from "./changed-rig.ts";
import { columns, expectPrinted, gains, levels } from "./printed.ts";
import { fed, fromPair, fromSocket } from "./small-rigs.ts";
import { mainLeft, mainRight, phonesLeft, phonesRight, send, silent } from "./stages.ts";

const earthedAmplifier = { amplifier: onEarthBy(mainsEarth()) };

const into = (rig: Rig) => solved(changedRig(rig, earthedAmplifier), "amplifier", []);

/** One signal at both ears, decibels. */
const ears = (matrix: Matrix, signal: number) => levels(columns(matrix, signal));

/** Handbook, section 4 (C), into a stereo input of 10 kilohms a side: computed by nodal analysis in a SPICE simulator. */
describe("from one socket", () => {
  test("stereo headphone socket by TRS lead: stereo", () => {
    const matrix = into(fed("impedance-balanced", "TRS lead", fromSocket("phones")));
    expectPrinted(gains(columns(matrix, phonesLeft, phonesRight)), "1.00 0 0 1.00");
  });

  test("one stereo socket by TS lead: left, and the right shorted", () => {
    const matrix = into(fed("impedance-balanced", "TS lead", fromSocket("phones")));
    expectPrinted(gains(columns(matrix, phonesLeft, phonesRight)), "1.00 0 0 0");
  });

  test("mono send, impedance-balanced: one ear", () => {
    const [left = 0, right = 0] = ears(
      into(fed("impedance-balanced", "TRS lead", fromSocket("send"))),
      send,
    );
    expectPrinted([left], "-0.1");
    expect(right).toBeLessThan(silent);
  });

  test("mono send, actively balanced: hollow", () => {
    const matrix = into(fed("actively balanced", "TRS lead", fromSocket("send")));
    expectPrinted(ears(matrix, send), "-0.1 -0.1");
    const [left = 0, right = 0] = gains(columns(matrix, send));
    expect([left, right].map(Math.sign)).toEqual([1, -1]);
  });

  test("mono send of 150 ohms by one-to-both lead: mono, the cure", () => {
    const matrix = into(fed("impedance-balanced", "one-to-both lead", fromSocket("send")));
    expectPrinted(ears(matrix, send), "-0.26 -0.26");
    expectPrinted(gains(columns(matrix, send)), "0.97 0.97");
  });

  test.each([
    ["impedance-balanced", "0.99 0"],
    ["actively balanced", "0.99 -0.99"],
  ] as const)("the right jack of a pair, %s, by TRS lead: one side only", (balancing, printed) => {
    const matrix = into(fed(balancing, "TRS lead", fromSocket("main right")));
    expectPrinted(gains(columns(matrix, mainRight)), printed);
    expect(gains(columns(matrix, mainLeft))).toEqual([0, 0]);
  });
});

describe("from both jacks by insert Y", () => {
  test.each([
    ["impedance-balanced", "-0.13 -0.13"],
    ["actively balanced", "-0.09 -0.09"],
  ] as const)("%s: stereo", (balancing, printed) => {
    const matrix = columns(into(fed(balancing, "insert Y", fromPair)), mainLeft, mainRight);
    const [ll = 0, lr = 0, rl = 0, rr = 0] = levels(matrix);
    expectPrinted([ll, rr], printed);
    expect(Math.max(lr, rl)).toBeLessThan(silent);
  });

  test.each(["impedance-balanced", "actively balanced"] as const)("%s, one plug out", (by) => {
    const rig = fed(by, "insert Y", fromPair);
    const out = {
      ...rig,
      plugged: rig.plugged.filter(({ part, plug }) => part !== "feed lead" || plug !== "right"),
    };
    expectPrinted(gains(columns(into(out), mainLeft, mainRight)), "0.99 0 0 0");
  });

  test("sides exchanged: swapped", () => {
    const rig = changedRig(fed("impedance-balanced", "insert Y", fromPair), earthedAmplifier);
    const fault = faultOf(rig, "feed lead / plugs / sides exchanged");
    const matrix = columns(solved(rig, "amplifier", [fault]), mainLeft, mainRight);
    expectPrinted(gains(matrix), "0 0.99 0.99 0");
  });
});
