import type { Hertz, Seconds } from "#core/units/units.ts";
import { renderedLevel } from "./caps.ts";
import { addClick } from "./click.ts";
import type { Channels, Signal } from "./signal.ts";
import { addTones, scaledTo, sizeAt, type Tone } from "./tones.ts";

/** So many tones on each channel, so far apart. */
const count = 120;
const apart: Hertz = 125;
/** Where each comb begins. No product of second or third order of one falls on a tone of the other. */
const begins = { left: 100, right: 162 } as const;

/** A comb with the phases of D. J. Newman (1965): it peaks low. */
export const comb = (begin: Hertz, step: Hertz, tones: number): readonly Tone[] =>
  scaledTo(
    renderedLevel,
    Array.from({ length: tones }, (_, at) => ({
      frequency: begin + step * at,
      peak: 0,
      turns: at ** 2 / (2 * tones),
    })),
  );

/** The tones of each comb, by the side it is on first. */
export const combs = {
  left: comb(begins.left, apart, count),
  right: comb(begins.right, apart, count),
};
/** When the two clicks begin, */
export const marks: readonly Seconds[] = [0.1, 0.6];
const first = { start: 1, end: 5 };
const second = { start: 5.5, end: 9.5 };
/** the two stretches of tones, from the middle of one swell to the middle of the other, */
export const halves = [first, second] as const;
/** and how long they swell. */
export const swell: Seconds = 0.02;

/** Whole periods of some tones for a time: one second of them, over and over. */
function put(channel: Float32Array, rate: Hertz, tones: readonly Tone[], when: typeof first): void {
  const period = new Float32Array(rate);
  addTones(period, rate, tones, { start: -1, end: 2, swell });
  const last = Math.min(channel.length, Math.floor((when.end + swell / 2) * rate));
  for (let n = Math.ceil((when.start - swell / 2) * rate); n < last; n += 1) {
    const size = sizeAt({ ...when, swell }, n / rate);
    channel[n] = (channel[n] ?? 0) + size * (period[n % rate] ?? 0);
  }
}

function fill({ left, right }: Channels, rate: Hertz): void {
  for (const start of marks) {
    addClick(left, rate, start);
    addClick(right, rate, start);
  }
  put(left, rate, combs.left, first);
  put(right, rate, combs.right, first);
  put(left, rate, combs.right, second);
  put(right, rate, combs.left, second);
}

/**
 * Two combs at once, one on each channel: every tone gives one entry of the ear matrix, what is empty between them the noise. Two clicks before
 * tell the delay; then the same with the combs exchanged. Each lasts four seconds, whole periods. Not for ears.
 */
export const multitone: Signal = {
  duration: 9.6,
  level: renderedLevel,
  peak: -18.1,
  stretches: () =>
    halves.map(({ start, end }) => ({
      start: start - swell / 2,
      end: end + swell / 2,
      left: 1,
      right: 1,
    })),
  loop: (rate) => ({ from: 2 * rate, to: 3 * rate }),
  fill,
};

/** The frequencies of each comb, for whoever takes the recording apart. */
export const combFrequencies = {
  left: combs.left.map(({ frequency }) => frequency),
  right: combs.right.map(({ frequency }) => frequency),
};
