import type { RigFault } from "#core/rig/rig-faults.ts";
import type { Probability, Seconds } from "#core/units/units.ts";

/** Twist a plug, or press the lead at its neck, while something plays: does anything change? */
export const twistAnswers = ["nothing changes", "it comes and goes"] as const;

/** Handbook, section 8: to push an end home. */
export const twistSeconds: Seconds = 8;

/** How often twisting moves a contact that makes and breaks, one that is dirty, and one that is sound. Common practice, no source. */
const loose: Probability = 0.9;
const dirty: Probability = 0.4;
const sound: Probability = 0.02;

/** One probability for each answer, from the faults at the plug. */
export function predictTwist(faults: readonly RigFault[]): Float64Array {
  const changes = faults.reduce(
    (most, { comesAndGoes, cleans }) =>
      Math.max(most, comesAndGoes ? loose : 0, cleans ? dirty : 0),
    sound,
  );
  return Float64Array.from([1 - changes, changes]);
}
