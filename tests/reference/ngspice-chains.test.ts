import { describe, expect, test } from "vitest";
import { everyRig } from "./every-rig.ts";
import { installed } from "./ngspice.ts";
import { compareAll, frequencies, rigCases } from "./simulated.ts";
import { beyond, table } from "./tables.ts";

/** The whole way as one circuit, amplifiers as controlled sources and the acoustics of in-ears as filters. */
describe.runIf(installed() || process.env.CI !== undefined)("ngspice says the same of", () => {
  test("ear matrices under every fault", { timeout: 240_000 }, () => {
    const compared = compareAll(everyRig.flatMap(rigCases), frequencies);
    console.info(table("ear matrices", compared));
    expect(beyond(compared)).toEqual([]);
    expect(compared.length).toBeGreaterThan(300);
  });
});
