import { fromDecibels } from "#core/units/decibels.ts";
import type { Hertz, Seconds } from "#core/units/units.ts";
import type { Signal } from "./signal.ts";

/** Twelve cycles of 1.5 kHz under one raised cosine: whole cycles, so that it has no offset. */
export const clickLength: Seconds = 0.008;
const frequency = 1500;
const peak = -18.5;
const starts = [0.1, 0.6, 1.1, 1.6];

/** A click at a time from its beginning; its tone may be turned ahead, as something between may turn it. */
export const clickAt = (time: Seconds, turns = 0): number =>
  fromDecibels(peak) *
  (Math.sin((Math.PI * time) / clickLength) ** 2 *
    Math.cos(2 * Math.PI * (frequency * (time - clickLength / 2) + turns)));

/** The mean square of the cosine is a half, of the raised cosine squared three eighths. */
const level = peak + 10 * Math.log10(3 / 16);

/** Adds one click. */
export function addClick(channel: Float32Array, rate: Hertz, start: number): void {
  const last = Math.min(channel.length, Math.floor((start + clickLength) * rate) + 1);
  for (let n = Math.ceil(start * rate); n < last; n += 1)
    channel[n] = (channel[n] ?? 0) + clickAt(n / rate - start);
}

/** A click on both channels at the same instant, every half second: one side late is heard, and measured, as a delay between them. */
export const click: Signal = {
  duration: 2,
  level,
  peak,
  stretches: () => starts.map((start) => ({ start, end: start + clickLength, left: 1, right: 1 })),
  fill: ({ left, right }, rate) => {
    for (const start of starts) addClick(left, rate, start);
    right.set(left);
  },
};
