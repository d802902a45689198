import { fromDecibels } from "#core/units/decibels.ts";
import { renderedLevel } from "./caps.ts";
import { type Glide, turnsAt } from "./glide.ts";
import { raised } from "./raised.ts";
import type { Signal } from "./signal.ts";

const up: Glide = { from: 30, to: 500, length: 8 };
const start = 0.1;
const end = start + 2 * up.length;
const ramp = 0.1;
const peak = renderedLevel + 10 * Math.log10(2);

/** Turns up to a time: up, and down again the same way. */
function turns(time: number): number {
  const past = time - start;
  return past <= up.length
    ? turnsAt(up, past)
    : 2 * turnsAt(up, up.length) - turnsAt(up, 2 * up.length - past);
}

/** A tone that glides from 30 to 500 Hz and back on both channels, at the level of programme: what buzzes or rattles gives itself away. */
export const buzzSearch: Signal = {
  duration: end + 0.1,
  level: renderedLevel,
  peak,
  stretches: () => [{ start, end, left: 1, right: 1 }],
  fill: ({ left, right }, rate) => {
    const last = Math.min(left.length, Math.floor(end * rate));
    for (let n = Math.ceil(start * rate); n < last; n += 1) {
      const time = n / rate;
      left[n] =
        fromDecibels(peak) *
        raised(Math.min(time - start, end - time), ramp) *
        Math.sin(2 * Math.PI * (turns(time) % 1));
    }
    right.set(left);
  },
};
