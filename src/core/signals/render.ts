import type { Hertz } from "#core/units/units.ts";
import { type SignalName, signals } from "./catalogue.ts";
import type { Signal } from "./signal.ts";
import type { Sound } from "./sound.ts";

const slowest: Hertz = 8000;
const fastest: Hertz = 768_000;

/** The samples of a signal of the catalogue; see `renderSignal`. */
export const render = (name: SignalName, rate: Hertz, seed: number): Sound =>
  renderSignal(signals[name], rate, seed);

/**
 * The samples of a signal at a sampling rate in hertz. The same signal, rate and seed give the same samples; the seed
 * decides the order of a pair and nothing else.
 * @throws RangeError for a rate below 8 kHz (the idents' band would not fit) or above 768 kHz
 */
export function renderSignal({ duration, fill }: Signal, rate: Hertz, seed: number): Sound {
  if (!(rate >= slowest && rate <= fastest))
    throw new RangeError(`sampling rate ${rate} Hz is not within ${slowest} to ${fastest} Hz`);
  const length = Math.round(duration * rate);
  const sound = { left: new Float32Array(length), right: new Float32Array(length), rate };
  fill(sound, rate, seed);
  return sound;
}
