import { describe, expect, test } from "vitest";
import { partKinds } from "#core/parts/part.ts";
import { build } from "#core/rig/rig.ts";
import { rigFaults } from "#core/rig/rig-faults.ts";
import { builtInRigs } from "#core/rig/rigs.ts";
import { midband } from "#core/rig/steps.ts";
import { installed } from "./ngspice.ts";
import { type Case, type Compared, chainCases, compare, stretchCases } from "./simulated.ts";
import { fed, fromPair, fromSocket, laptopIntoAmplifier } from "./small-rigs.ts";

/** Between them, every part and every socket of it. */
const rigs = [
  ...builtInRigs,
  laptopIntoAmplifier,
  fed("actively balanced", "TS lead", fromSocket("phones")),
  fed("impedance-balanced", "one-to-both lead", fromSocket("send")),
  fed("impedance-balanced", "TRS lead", fromSocket("send")),
  fed("actively balanced", "TRS lead", fromSocket("send")),
  fed("actively balanced", "TRS lead", fromSocket("main right")),
  fed("impedance-balanced", "insert Y", fromPair),
].map(build);

/** Where the capacitance of a lead tells; see the handbook, section 5. */
const high = 10_000;

const groups = [
  ["circuits at 1 kHz", () => rigs.flatMap((rig) => stretchCases(rig, midband))],
  ["circuits at 10 kHz", () => rigs.flatMap((rig) => stretchCases(rig, high))],
  ["ear matrices", () => rigs.flatMap(chainCases)],
] as const;

/** Cases of equally many signals go to the simulator together. */
function compareAll(cases: readonly Case[]): Compared[] {
  const counts = [...new Set(cases.map(({ signals }) => signals))];
  return counts.flatMap((count) => compare(cases.filter(({ signals }) => signals === count)));
}

function table(title: string, compared: readonly Compared[]): string {
  const kinds = ["no fault", ...partKinds] as const;
  const rows = kinds.flatMap((kind) => {
    const own = compared.filter(({ of }) => of === kind);
    if (own.length === 0) return [];
    const entries = own.reduce((sum, { ours }) => sum + ours.flat().length, 0);
    const off = Math.max(...own.map((one) => one.off)).toExponential(1);
    const share = (100 * Math.max(...own.map((one) => one.share))).toPrecision(2);
    return [
      `  ${kind.padEnd(20)}${String(own.length).padStart(6)}${String(entries).padStart(9)}${off.padStart(12)}${share.padStart(14)} %`,
    ];
  });
  const head = "  fault of             cases  entries  largest, V  of the allowed";
  return [`ngspice against the core: ${title}`, head, ...rows].join("\n");
}

const here = installed();

describe.runIf(here || process.env.CI !== undefined)("ngspice says the same of", () => {
  test.each(groups)("%s", { timeout: 120_000 }, (title, cases) => {
    const compared = compareAll(cases());
    console.info(table(title, compared));
    const beyond = compared.filter(({ share }) => !(share <= 1));
    expect(beyond.map(({ name, off }) => `${name} is off by ${off} V`)).toEqual([]);
  });

  test("faults of every kind of part", () => {
    const kinds = rigs.flatMap((rig) =>
      rigFaults(rig).map((fault) => rig.parts.find(({ id }) => id === fault.part)?.kind),
    );
    expect(new Set(kinds)).toEqual(new Set(partKinds));
  });
});

if (!here && process.env.CI === undefined)
  console.warn("ngspice is not installed: the circuits were compared with no outside solver");
