import { size } from "#core/units/complex.ts";
import type { Matrix } from "#core/units/matrix.ts";
import type { Hertz } from "#core/units/units.ts";
import { type Behaviour, follow } from "./behaviour.ts";
import { type Gains, signed } from "./effect.ts";
import { midband } from "./midband.ts";
import type { BuiltRig } from "./rig.ts";
import type { RigFault } from "./rig-faults.ts";
import { stepsTo } from "./steps.ts";

/** What the way to a position does under a fault set. */
export const behaviourAt = (
  rig: BuiltRig,
  position: string,
  faults: readonly RigFault[],
  at: Hertz = midband,
): Behaviour =>
  stepsTo(rig, position)
    .map((step) => step.behaviour(faults.filter(step.owns), step.branch(position), at))
    .reduce(follow);

/**
 * The ear matrix of a position under a fault set: rows the ears, columns the programme, left first; complex gains against the
 * programme's open voltage, at 1 kHz unless told otherwise.
 */
export function earMatrix(
  rig: BuiltRig,
  position: string,
  faults: readonly RigFault[],
  at: Hertz = midband,
): Matrix {
  return ears(behaviourAt(rig, position, faults, at));
}

/**
 * Real gains of the four ways to a position's ears under a fault set, one for the largest of a healthy chain: left ear from left,
 * left ear from right, right ear from left, right ear from right.
 */
export function relativeGains(rig: BuiltRig, position: string, faults: readonly RigFault[]): Gains {
  const healthy = earMatrix(rig, position, []).flat().map(size);
  return signed(earMatrix(rig, position, faults), Math.max(...healthy));
}

/** From the cups to the ears: who wears them backwards has them exchanged, and an ear may hear less. */
export function ears({ gains, worn, hearing }: Behaviour): Matrix {
  const rows = worn < 0 ? [...gains].reverse() : gains;
  return rows.map((row, ear) =>
    row.map(({ re, im }) => ({ re: re * (hearing[ear] ?? 1), im: im * (hearing[ear] ?? 1) })),
  );
}
