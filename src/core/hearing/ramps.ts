import { edgeRise, steepestEdge } from "#core/signals/edges.ts";
import { raised } from "#core/signals/raised.ts";
import { fromDecibels } from "#core/units/decibels.ts";
import type { Hertz, Seconds } from "#core/units/units.ts";

/** Length of a raised-cosine ramp (common practice, no source). */
const rampTime: Seconds = 0.01;
/** As long below this it is a pause, and the sound after it begins anew: a little above gate one's silence (-80 dBFS). */
const hush = fromDecibels(-74);
const hushTime: Seconds = 0.0005;
/** A sound that still begins abruptly after so many ramps, */
const tries = 6;
/** or has lost all but this part of its peak to them, is nothing but clicks. */
const leastLeft = 0.25;

/** The same channel with a ramp at both ends; it may begin and end anywhere, and be joined to itself. */
export function rampedEnds(channel: Float32Array, rate: Hertz): Float32Array {
  const last = channel.length - 1;
  const ramp = Math.max(1, Math.round(rampTime * rate));
  const result = channel.slice();
  for (let n = 0; n <= Math.min(ramp, last); n += 1) {
    result[n] = (result[n] ?? 0) * raised(n, ramp);
    result[last - n] = (result[last - n] ?? 0) * raised(n, ramp);
  }
  return result;
}

/**
 * The same channel with ramps wherever it begins after a pause or ends before one, if it does so more abruptly than gate
 * one lets through; as it is where it does not. Undefined when it is nothing but clicks. For a channel near full size: a
 * faint one is below `hush` at every turn of its wave.
 */
export function softened(channel: Float32Array, rate: Hertz): Float32Array | undefined {
  let result = channel;
  for (let tried = 0; steepestEdge(result, rate) > edgeRise; tried += 1) {
    if (tried === tries) return undefined;
    result = openedSoftly(openedSoftly(result, rate).reverse(), rate).reverse();
  }
  if (result === channel) return channel;
  return peakOf(result) < leastLeft * peakOf(channel) ? undefined : result;
}

/** A copy in which every sound after a pause opens along a ramp. */
function openedSoftly(channel: Float32Array, rate: Hertz): Float32Array {
  const samples = (time: Seconds) => Math.max(1, Math.round(time * rate));
  const [ramp, pause] = [samples(rampTime), samples(hushTime)];
  let [quiet, open] = [pause, 0];
  return channel.map((sample) => {
    if (Math.abs(sample) < hush) quiet += 1;
    else {
      if (quiet >= pause) open = 0;
      quiet = 0;
    }
    open += 1;
    return sample * raised(open, ramp);
  });
}

const peakOf = (channel: Float32Array): number =>
  channel.reduce((most, sample) => Math.max(most, Math.abs(sample)), 0);
