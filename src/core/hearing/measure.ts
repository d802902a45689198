import { capWindow, levelCap, peakCap, renderedLevel } from "#core/signals/caps.ts";
import { offsetOf } from "#core/signals/offset.ts";
import { fromDecibels } from "#core/units/decibels.ts";
import type { Hertz } from "#core/units/units.ts";

/** What is bounded near ears, full scale 1; all three grow with the sound. */
export interface Measure {
  /** Greatest sample. */
  readonly peak: number;
  /** Greatest root mean square over any `capWindow`. */
  readonly level: number;
  /** As gate one measures it. */
  readonly offset: number;
}

export const nothing: Measure = { peak: 0, level: 0, offset: 0 };

/** A thousandth of a decibel, so that rounding breaks no bound. */
const margin = 0.9999;

/** A little less than gate one lets through. */
export const gate: Measure = {
  peak: fromDecibels(peakCap) * margin,
  level: fromDecibels(levelCap) * margin,
  offset: 0.00095,
};

/**
 * What a sound may be as rendered, so that it keeps under both caps when the level is raised to its own cap. A part of a
 * deep wave is an offset: a loud bass keeps the whole sound lower.
 */
export const rendered: Measure = {
  peak: fromDecibels(peakCap - (levelCap - renderedLevel)) * margin,
  level: fromDecibels(renderedLevel),
  offset: 0.0008,
};

/** The measures of a channel. */
export function measured(channel: Float32Array, rate: Hertz): Measure {
  const width = Math.max(1, Math.round(capWindow * rate));
  let [power, peak, greatestPower] = [0, 0, 0];
  for (let n = 0; n < channel.length; n += 1) {
    const [comes, goes] = [channel[n] ?? 0, n < width ? 0 : (channel[n - width] ?? 0)];
    power += comes * comes - goes * goes;
    peak = Math.max(peak, Math.abs(comes));
    greatestPower = Math.max(greatestPower, power);
  }
  return { peak, level: Math.sqrt(greatestPower / width), offset: offsetOf(channel, rate) };
}

/** The greater of each. */
export const greater = (one: Measure, other: Measure): Measure => ({
  peak: Math.max(one.peak, other.peak),
  level: Math.max(one.level, other.level),
  offset: Math.max(one.offset, other.offset),
});

/** The measures of so many times the sound. */
export const times = ({ peak, level, offset }: Measure, gain: number): Measure => ({
  peak: peak * gain,
  level: level * gain,
  offset: offset * gain,
});

/** The greatest gain at which nothing of a sound is over the bounds; infinite for silence. */
export const gainWithin = (sound: Measure, bounds: Measure): number =>
  Math.min(
    gainTo(sound.peak, bounds.peak),
    gainTo(sound.level, bounds.level),
    gainTo(sound.offset, bounds.offset),
  );

const gainTo = (value: number, bound: number): number =>
  value === 0 ? Number.POSITIVE_INFINITY : bound / value;
