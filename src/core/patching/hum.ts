import { solve } from "#core/circuit/solve.ts";
import { hum } from "#core/parts/boxes.ts";
import { circuitInto, solved } from "#core/rig/circuit-step.ts";
import { inside } from "#core/rig/inside-step.ts";
import { isFed, reachInto } from "#core/rig/reach.ts";
import type { BuiltRig } from "#core/rig/rig.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import { stretchInto } from "#core/rig/stretch.ts";
import { add, type Complex, size, subtract } from "#core/units/complex.ts";
import { toDecibels } from "#core/units/decibels.ts";
import { chain } from "#core/units/matrix.ts";
import type { Decibels, Hertz } from "#core/units/units.ts";

/** Mains frequency of most of the world; the other, 60 Hz, is 1.6 dB more through a supply's capacitance. */
const mains: Hertz = 50;

/** How much of the mains is in what a part takes in, in words. */
const humRisks = ["none", "some", "loud"] as const;
export type HumRisk = (typeof humRisks)[number];

/** Mains hum that the stretch into a part picks up, one complex voltage for each thing it takes in, volts at 50 Hz. */
export function pickedUp(
  rig: BuiltRig,
  part: string,
  faults: readonly RigFault[] = [],
): readonly Complex[] {
  const [volts] = solve(stretchInto(rig, part, faults).circuit, mains, [hum]);
  if (volts === undefined) throw new Error("a circuit without an answer");
  return rig
    .part(part)
    .takes.map(({ plus, minus }) =>
      subtract(volts(`${part}: ${plus}`), volts(`${part}: ${minus}`)),
    );
}

/**
 * Mains hum at what a part takes in, one complex voltage for each, volts at 50 Hz: what its own stretch picks up, and what comes from
 * further up through the boxes between.
 */
export function humInto(
  rig: BuiltRig,
  part: string,
  faults: readonly RigFault[] = [],
): readonly Complex[] {
  const step = circuitInto(rig, part);
  const here = faults.filter(step.owns);
  const own = pickedUp(rig, part, here);
  const { from } = reachInto(rig, part);
  if (!isFed(rig, from)) return own;
  const box = inside(rig, from);
  const through = box.behaviour(faults.filter(box.owns), 0, mains).gains;
  const into = solved(rig, part, here, mains);
  const passed = chain(
    chain(into, through),
    humInto(rig, from, faults).map((one) => [one]),
  );
  return own.map((one, side) => add(one, passed[side]?.[0] ?? { re: 0, im: 0 }));
}

/** Against one volt of programme. Where it turns from none to some to loud: common practice, no source. */
export function humRisk(volts: readonly Complex[]): HumRisk {
  const level: Decibels = toDecibels(Math.max(...volts.map(size), 1e-12));
  if (level > -30) return "loud";
  return level > -66 ? "some" : "none";
}
