import { fromDecibels } from "#core/units/decibels.ts";
import type { DecibelsFullScale, Hertz, Seconds } from "#core/units/units.ts";
import { raised } from "./raised.ts";

/** One tone: peak · sin 2π(frequency · t + turns), t counted from the beginning of the signal. */
export interface Tone {
  readonly frequency: Hertz;
  readonly peak: DecibelsFullScale;
  readonly turns?: number;
}

/** When tones sound. Each end is a raised cosine so long, half of it before the instant: there the tone has half its size. */
export interface While {
  readonly start: Seconds;
  readonly end: Seconds;
  readonly swell: Seconds;
}

/** Above this part of the rate nothing is made: it would come back as another tone. */
export const usable = 0.45;

/** Size between nothing and one, at a time. */
export const sizeAt = ({ start, end, swell }: While, time: Seconds): number =>
  raised(time - start + swell / 2, swell) * raised(end - time + swell / 2, swell);

/** Adds tones to a channel for some time. */
export function addTones(
  channel: Float32Array,
  rate: Hertz,
  tones: readonly Tone[],
  when: While,
): void {
  const made = tones
    .filter(({ frequency }) => frequency < usable * rate)
    .map(({ frequency, peak, turns = 0 }) => ({ frequency, turns, size: fromDecibels(peak) }));
  const first = Math.max(0, Math.ceil((when.start - when.swell / 2) * rate));
  const last = Math.min(channel.length, Math.floor((when.end + when.swell / 2) * rate) + 1);
  for (let n = first; n < last; n += 1) {
    const time = n / rate;
    let sum = 0;
    for (const { frequency, turns, size } of made)
      sum += size * Math.sin(2 * Math.PI * (((frequency * time) % 1) + turns));
    channel[n] = (channel[n] ?? 0) + sizeAt(when, time) * sum;
  }
}

/** The level of some tones together, 20 log10 of their root mean square. */
export const levelOf = (tones: readonly Tone[]): DecibelsFullScale =>
  10 * Math.log10(tones.reduce((sum, { peak }) => sum + fromDecibels(peak) ** 2 / 2, 0));

/** The same tones, louder or softer, so that together they have a level. */
export function scaledTo(level: DecibelsFullScale, tones: readonly Tone[]): readonly Tone[] {
  const by = level - levelOf(tones);
  return tones.map((tone) => ({ ...tone, peak: tone.peak + by }));
}
