import { describe, expect, test } from "vitest";
import { catalogue } from "#core/parts/catalogue.ts";
import { build } from "#core/rig/rig.ts";
import { rigFaults } from "#core/rig/rig-faults.ts";
import { straightIn } from "#core/rig/rigs.ts";
import { scale } from "#core/units/complex.ts";
import { everyRig } from "./every-rig.ts";
import { installed } from "./ngspice.ts";
import { numberCases } from "./numbers.ts";
import { type Case, compareAll, frequencies, stretchCases } from "./simulated.ts";
import { beyond, table } from "./tables.ts";

const groups = [
  ["circuits under every fault", 300, () => everyRig.flatMap(stretchCases)],
  ["circuits with every number at its least and its most", 200, () => numberCases(everyRig)],
] as const;

const here = installed();

describe.runIf(here || process.env.CI !== undefined)("ngspice says the same of", () => {
  test.each(groups)("%s", { timeout: 240_000 }, (title, fewest, cases) => {
    const compared = compareAll(cases(), frequencies);
    console.info(table(title, compared));
    expect(beyond(compared)).toEqual([]);
    expect(compared.length).toBeGreaterThan(fewest);
  });

  test("a circuit only while it is the same: an entry off by more than a thousandth is told", () => {
    const [healthy] = stretchCases(build(straightIn));
    if (healthy === undefined) throw new Error("a rig without a circuit");
    const bent = (by: number): Case => ({
      ...healthy,
      ours: (at) => healthy.ours(at).map((row) => row.map((gain) => scale(gain, by))),
    });
    const told = (by: number) => beyond(compareAll([bent(by)], frequencies)).length;
    expect([0.9995, 1, 1.0005].map(told)).toEqual([0, 0, 0]);
    expect([0.998, 1.002, -1, Number.NaN].map(told)).toEqual([1, 1, 1, 1]);
  });

  test("faults of every kind of part", () => {
    const kinds = everyRig.flatMap((rig) =>
      rigFaults(rig).map((fault) => rig.parts.find(({ id }) => id === fault.part)?.kind),
    );
    expect(new Set(kinds)).toEqual(new Set(Object.keys(catalogue)));
  });
});

if (!here && process.env.CI === undefined)
  console.warn("ngspice is not installed: the circuits were compared with no outside solver");
