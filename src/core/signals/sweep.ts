import { fromDecibels } from "#core/units/decibels.ts";
import { renderedLevel } from "./caps.ts";
import { type Glide, turnsAt } from "./glide.ts";
import { raised } from "./raised.ts";
import type { Signal } from "./signal.ts";
import { usable } from "./tones.ts";

const glide: Glide = { from: 20, to: 20_000, length: 6 };
const start = 0.1;
const end = start + glide.length;
const [rise, fall] = [0.1, 0.005];
const peak = renderedLevel + 10 * Math.log10(2);

/** An exponential sweep from 20 Hz to 20 kHz in six seconds, both channels; it ends where the rate has no room for more. Not for ears. */
export const sweep: Signal = {
  duration: end + 0.1,
  level: renderedLevel,
  peak,
  stretches: () => [{ start, end, left: 1, right: 1 }],
  fill: ({ left, right }, rate) => {
    const most = Math.min(glide.to, usable * rate);
    const length = (glide.length * Math.log(most / glide.from)) / Math.log(glide.to / glide.from);
    for (let n = Math.ceil(start * rate); n <= (start + length) * rate; n += 1) {
      const past = n / rate - start;
      const size = fromDecibels(peak) * raised(past, rise) * raised(length - past, fall);
      left[n] = size * Math.sin(2 * Math.PI * (turnsAt(glide, past) % 1));
    }
    right.set(left);
  },
};
