import { fromDecibels } from "#core/units/decibels.ts";
import { renderedLevel } from "./caps.ts";
import { type Glide, turnsAt } from "./glide.ts";
import { ofWave } from "./of-wave.ts";
import { raised } from "./raised.ts";
import { usable } from "./tones.ts";

const glide: Glide = { from: 20, to: 20_000, length: 6 };
const release = 0.005;
const peak = renderedLevel + 10 * Math.log10(2);

/** An exponential sweep from 20 Hz to 20 kHz in six seconds, both channels; it ends where the rate has no room for more. Not for ears. */
export const sweep = ofWave(
  { start: 0.1, end: 0.1 + glide.length, attack: 0.1, release, peak },
  (rate) => {
    const most = Math.min(glide.to, usable * rate);
    const length = (glide.length * Math.log(most / glide.from)) / Math.log(glide.to / glide.from);
    return (past) =>
      fromDecibels(peak) *
      raised(length - past, release) *
      Math.sin(2 * Math.PI * (turnsAt(glide, past) % 1));
  },
);
