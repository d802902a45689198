import { describe, expect, test } from "vitest";
import { hum, supplies } from "#core/parts/boxes.ts";
import { humInto } from "#core/patching/hum.ts";
import { circuitInto } from "#core/rig/circuit-step.ts";
import { type BuiltRig, build, type Rig } from "#core/rig/rig.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import { fromHeadphoneSocket } from "#core/rig/rigs.ts";
import { type Complex, size } from "#core/units/complex.ts";
import { outsideBlock } from "./chain-deck.ts";
import { faultOf } from "./changed-rig.ts";
import { installed } from "./ngspice.ts";
import { rowRigs } from "./row-rigs.ts";
import { type Case, compareAll, named, same, steadyFaults } from "./simulated.ts";
import { laptopIntoAmplifier } from "./small-rigs.ts";
import { beyond, table } from "./tables.ts";

/** A laptop into an amplifier, each on its own supply. */
const powered = supplies.flatMap((laptop) =>
  supplies.map(
    (amplifier): Rig => ({
      ...laptopIntoAmplifier,
      name: `laptop (${laptop}) into an amplifier (${amplifier})`,
      parts: laptopIntoAmplifier.parts.map((part) => {
        if (part.id === "laptop") return { ...part, settings: { supply: laptop } };
        return part.id === "amplifier" ? { ...part, settings: { supply: amplifier } } : part;
      }),
    }),
  ),
);

/** What a part takes in of the mains, with nothing wrong and under each of some faults. */
const humCases = (rig: BuiltRig, part: string, each: readonly RigFault[]): Case[] =>
  [[], ...each.map((fault) => [fault])].map((faults) => ({
    ...named(rig, `hum into ${part}`, faults),
    ours: () => humInto(rig, part, faults).map((volts) => [volts]),
    block: outsideBlock(rig, part, faults, hum),
    signals: 1,
    heard: same,
  }));

/** A thousandth of itself, or a hundredth of a microvolt: hum is small where all is well. */
const allowed = (outside: Complex) => Math.max(0.001 * size(outside), 1e-8);

describe.runIf(installed() || process.env.CI !== undefined)("ngspice says the same of", () => {
  test("mains hum at 50 Hz", { timeout: 120_000 }, () => {
    const three = build(fromHeadphoneSocket("laptop, mixer, amplifier", ["one"]));
    const cases = [
      ...powered
        .map(build)
        .flatMap((rig) =>
          humCases(rig, "amplifier", steadyFaults(rig).filter(circuitInto(rig, "amplifier").owns)),
        ),
      ...humCases(
        three,
        "headphones 1",
        ["insert lead / body / sleeve open", "feed lead / body / sleeve open"].map((id) =>
          faultOf(three, id),
        ),
      ),
    ];
    const rows = rowRigs
      .map(build)
      .flatMap((rig) => ["middle", "box", "box's"].flatMap((part) => humCases(rig, part, [])));
    const compared = compareAll([...cases, ...rows], [50], allowed);
    console.info(table("hum", compared));
    expect(beyond(compared)).toEqual([]);
    const loud = compared.filter(({ ours }) =>
      ours(50)
        .flat()
        .some((one) => size(one) > 0.01),
    );
    expect(loud.length).toBeGreaterThan(10);
  });
});
