import type { Settings } from "#core/parts/kind.ts";
import type { Rig } from "#core/rig/rig.ts";

/** The signals inside a mixer, by their place in its matrix. */
export const [mainLeft, mainRight, send, phonesLeft, phonesRight] = [0, 1, 2, 3, 4];

/** Below this a table says 'nothing', decibels. */
export const silent = -60;

/** A rig whose mixer has other settings: its output stage, and the ohms of a leg. */
export const staged = (rig: Rig, settings: Settings): Rig => ({
  ...rig,
  parts: rig.parts.map((part) => (part.id === "mixer" ? { ...part, settings } : part)),
});
