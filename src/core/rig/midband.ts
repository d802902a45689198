import type { Hertz } from "#core/units/units.ts";

/** Most faults are the same at every frequency; where they are not, this is the middle of the idents. */
export const midband: Hertz = 1000;
