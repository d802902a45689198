import { flexTones } from "./flex-tones.ts";
import { multitone } from "./multitone.ts";
import type { Signal } from "./signal.ts";
import { staircase } from "./staircase.ts";
import { sweep } from "./sweep.ts";

/** What is measured or recorded, and never played to ears: no player takes these names. */
export const instrumentNames = ["sweep", "multitone", "flex-tones", "staircase"] as const;
export type InstrumentName = (typeof instrumentNames)[number];

export const instruments: Readonly<Record<InstrumentName, Signal>> = {
  sweep,
  multitone,
  "flex-tones": flexTones,
  staircase,
};
