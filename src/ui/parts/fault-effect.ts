import { behaviourAt, earMatrix, ears } from "#core/rig/ear-matrix.ts";
import { type Effect, effectOf, signed } from "#core/rig/effect.ts";
import type { BuiltRig } from "#core/rig/rig.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import { size } from "#core/units/complex.ts";
import { english } from "#core/words/english.ts";

/** What a fault by itself does to a position's lanes. */
export function effectAt(rig: BuiltRig, position: string, fault: RigFault): Effect {
  const healthy = ears(behaviourAt(rig, position, []))
    .flat()
    .map(size);
  return effectOf(signed(earMatrix(rig, position, [fault]), Math.max(...healthy)));
}

/** In a few words; nothing for what leaves the lanes alone, as a person who takes left for right. */
export function effectWords(effect: Effect): string | undefined {
  return effect === "straight" ? undefined : english.effects[effect];
}

/** The same without its explanation. */
export const effectBriefly = (effect: Effect): string | undefined =>
  effectWords(effect)?.split(":")[0];
