import { relativeGains } from "#core/rig/ear-matrix.ts";
import { type Effect, effectOf } from "#core/rig/effect.ts";
import type { BuiltRig } from "#core/rig/rig.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import type { Language } from "#core/words/language.ts";

/** What a fault by itself does to a position's lanes. */
export const effectAt = (rig: BuiltRig, position: string, fault: RigFault): Effect =>
  effectOf(relativeGains(rig, position, [fault]));

/** In a few words; nothing for what leaves the lanes alone, as a person who takes left for right. */
export function effectWords({ effects }: Language, effect: Effect): string | undefined {
  return effect === "straight" ? undefined : effects[effect];
}

/** The same without its explanation. */
export const effectBriefly = (language: Language, effect: Effect): string | undefined =>
  effectWords(language, effect)?.split(":")[0];
