import { gainFor } from "#audio/course.ts";
import { renderedLevel } from "#core/signals/caps.ts";
import { type SignalName, signals } from "#core/signals/catalogue.ts";
import { render } from "#core/signals/render.ts";
import { fromDecibels } from "#core/units/decibels.ts";
import type { DecibelsFullScale, Hertz } from "#core/units/units.ts";

/** What must come out of a device when a signal is played: once, or over and over. */
export interface Programme {
  /** Frames until it ends or begins over. */
  readonly left: Float64Array;
  readonly right: Float64Array;
  /** Where it begins over; undefined when it is played once. */
  readonly again: number | undefined;
}

/** A signal as rendered, brought to the level that all are played at, times the gain of the stage. */
export function programmeOf(
  name: SignalName,
  seed: number,
  rate: Hertz,
  { level, loop }: { readonly level: DecibelsFullScale; readonly loop: boolean },
): Programme {
  const signal = signals[name];
  const { left, right } = render(name, rate, seed);
  const by = fromDecibels(renderedLevel - signal.level) * gainFor(level);
  const { from, to } = (loop && signal.loop?.(rate)) || { from: 0, to: left.length };
  const turned = (channel: Float32Array) =>
    Float64Array.from(channel.subarray(0, to), (sample) => sample * by);
  return { left: turned(left), right: turned(right), again: loop ? from : undefined };
}

/** Which frame of a programme is heard at a time, in frames since it began; undefined before and after it. */
export function frameAt({ left, again }: Programme, time: number): number | undefined {
  if (time < left.length) return time < 0 ? undefined : time;
  if (again === undefined) return undefined;
  return again + ((time - again) % (left.length - again));
}

/** Frames of silence that a programme begins with. */
export const leadOf = ({ left, right }: Programme): number =>
  left.findIndex((sample, n) => sample !== 0 || right[n] !== 0);
