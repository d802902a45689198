import type { Hertz } from "#core/units/units.ts";
import { capWindow } from "./caps.ts";
import { RunningMean } from "./running-mean.ts";

/**
 * The greatest offset of a channel that stands in silence, full scale 1: a mean over about a `capWindow`, twice over half of it, so that what swings
 * slowly, as a deep tone does, is no offset.
 */
export function offsetOf(channel: Float32Array, rate: Hertz): number {
  const half = () => new RunningMean(Math.round((capWindow * rate) / 2), channel.length);
  const [once, twice] = [half(), half()];
  let most = 0;
  for (let n = 0; n < channel.length; n += 1)
    most = Math.max(most, Math.abs(twice.push(once.push(channel[n] ?? 0))));
  return most;
}
