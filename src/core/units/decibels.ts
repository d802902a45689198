import type { Decibels } from "./units.ts";

/** Amplitude ratio to decibels; zero is minus infinity. */
export const toDecibels = (ratio: number): Decibels => 20 * Math.log10(ratio);

/** Decibels to amplitude ratio. */
export const fromDecibels = (level: Decibels): number => 10 ** (level / 20);
