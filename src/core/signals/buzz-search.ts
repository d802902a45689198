import { fromDecibels } from "#core/units/decibels.ts";
import type { Seconds } from "#core/units/units.ts";
import { renderedLevel } from "./caps.ts";
import { type Glide, turnsAt } from "./glide.ts";
import { ofWave } from "./of-wave.ts";
import type { Signal } from "./signal.ts";

const up: Glide = { from: 30, to: 500, length: 8 };
const peak = renderedLevel + 10 * Math.log10(2);

/** Turns it has made: up, and down again the same way. */
const turns = (past: Seconds): number =>
  past <= up.length
    ? turnsAt(up, past)
    : 2 * turnsAt(up, up.length) - turnsAt(up, 2 * up.length - past);

/** A tone that glides from 30 to 500 Hz and back on both channels, at the level of programme: what buzzes or rattles gives itself away. */
export const buzzSearch: Signal = {
  ...ofWave(
    { start: 0.1, end: 0.1 + 2 * up.length, attack: 0.1, release: 0.1, peak },
    () => (past) => fromDecibels(peak) * Math.sin(2 * Math.PI * (turns(past) % 1)),
  ),
  turnedUp: true,
};
