import type { Hertz } from "#core/units/units.ts";
import { renderedLevel } from "./caps.ts";
import { ofTones } from "./of-tones.ts";
import type { Signal } from "./signal.ts";
import { scaledTo } from "./tones.ts";

/** How much of each harmonic, from the first on: the odd ones lead, as where a rectifier draws its current (common practice, no source). */
const harmonics = [0, -14, -6, -20, -12, -24, -16];

/** A mains hum to compare one with, on both channels. */
const hum = (mains: Hertz): Signal => ({
  ...ofTones(
    4.2,
    [
      {
        tones: scaledTo(
          renderedLevel,
          harmonics.map((peak, at) => ({ frequency: mains * (at + 1), peak })),
        ),
        left: 1,
        right: 1,
        start: 0.1,
        end: 4.1,
        swell: 0.1,
      },
    ],
    { peak: -18.5, loop: { from: 1, to: 2 } },
  ),
  turnedUp: true,
});

export const hum50 = hum(50);
export const hum60 = hum(60);
