import { fromDecibels } from "#core/units/decibels.ts";
import type { Hertz } from "#core/units/units.ts";
import type { Signal } from "./signal.ts";

/** Twelve cycles of 1.5 kHz under one raised cosine: whole cycles, so that it has no offset. */
const length = 0.008;
const frequency = 1500;
const peak = -18.5;
const starts = [0.1, 0.6, 1.1, 1.6];

const clickAt = (time: number): number =>
  Math.sin((Math.PI * time) / length) ** 2 *
  Math.cos(2 * Math.PI * frequency * (time - length / 2));

/** The mean square of the cosine is a half, of the raised cosine squared three eighths. */
const level = peak + 10 * Math.log10(3 / 16);

/** Adds one click. */
export function addClick(channel: Float32Array, rate: Hertz, start: number): void {
  const last = Math.min(channel.length, Math.floor((start + length) * rate) + 1);
  for (let n = Math.ceil(start * rate); n < last; n += 1)
    channel[n] = (channel[n] ?? 0) + fromDecibels(peak) * clickAt(n / rate - start);
}

/** A click on both channels at the same instant, every half second: one side late is heard, and measured, as a delay between them. */
export const click: Signal = {
  duration: 2,
  level,
  peak,
  stretches: () => starts.map((start) => ({ start, end: start + length, left: 1, right: 1 })),
  fill: ({ left, right }, rate) => {
    for (const start of starts) addClick(left, rate, start);
    right.set(left);
  },
};
