import type { Hertz } from "#core/units/units.ts";
import { gainWithin, gate, type Measure, measured, nothing, times } from "./measure.ts";
import { rampedEnds, softened } from "./ramps.ts";

/** A channel at another size. */
export interface Lifted {
  readonly samples: Float32Array;
  /** How many times the channel's own size; 0 for silence. */
  readonly lift: number;
  /** What it measures at the channel's own size, the ramps it was given included. */
  readonly own: Measure;
}

/**
 * A channel as large as gate one lets through, with ramps at both ends and where else the gate wants them; silence, when no
 * sample of it is over `silent`. Undefined when it is nothing but clicks. Gate one knows abrupt from gentle only near full
 * size: in a faint sound every turn of the wave is below its silence.
 */
export function fullSize(channel: Float32Array, rate: Hertz, silent: number): Lifted | undefined {
  const before = measured(channel, rate);
  if (before.peak <= silent) return silence(channel.length);
  const lift = gainWithin(before, gate);
  const soft = softened(rampedEnds(scaled(channel, lift), rate), rate);
  if (soft === undefined) return undefined;
  const after = measured(soft, rate);
  if (after.peak === 0) return silence(channel.length);
  // A ramp that cuts into a deep wave can leave more offset than there was.
  const less = Math.min(1, gainWithin(after, gate));
  const samples = less < 1 ? scaled(soft, less) : soft;
  return { samples, lift: lift * less, own: times(after, 1 / lift) };
}

/** A channel so many times larger. */
export const scaled = (channel: Float32Array, gain: number): Float32Array =>
  channel.map((sample) => sample * gain);

const silence = (length: number): Lifted => ({
  samples: new Float32Array(length),
  lift: 0,
  own: nothing,
});
