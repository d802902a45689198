import { describe, expect, test } from "vitest";
import { build } from "#core/rig/rig.ts";
import { fromDecibels } from "#core/units/decibels.ts";
import { everyRig } from "./every-rig.ts";
import { installed } from "./ngspice.ts";
import { oneEarth } from "./one-earth.ts";
import { rowRigs } from "./row-rigs.ts";
import { compareAll, frequencies, rigCases, rowCases } from "./simulated.ts";
import { beyond, table } from "./tables.ts";

/** Everything in a rig as one circuit, amplifiers as controlled sources and the acoustics of in-ears as filters. */
describe.runIf(installed() || process.env.CI !== undefined)("ngspice says the same of", () => {
  test("ear matrices, whole rigs at once", { timeout: 240_000 }, () => {
    const compared = compareAll(rigCases(everyRig.map(oneEarth)), frequencies);
    console.info(table("ear matrices, whole rigs at once", compared));
    expect(beyond(compared)).toEqual([]);
    expect(compared.length).toBeGreaterThan(300);
  });

  test("boxes in a row as they are powered, but for what goes round by the earths", {
    timeout: 120_000,
  }, () => {
    const round = fromDecibels(-30);
    const compared = compareAll(rowCases(rowRigs.map(build)), frequencies, () => round);
    console.info(table("boxes in a row", compared));
    expect(beyond(compared)).toEqual([]);
  });
});
