import type { Decibels, DecibelsFullScale, Seconds } from "#core/units/units.ts";

/** With the minus that a minus is. */
const minus = (text: string): string => text.replace("-", "−");

/** A level against full scale, to whole decibels; nothing at all is under −120. */
export const dbfs = (level: DecibelsFullScale): string =>
  level < -120 ? "silent" : minus(`${Math.round(level)} dBFS`);

/** Decibels with one place; what rounds to nought has no sign. */
export function decibels(value: Decibels): string {
  const text = value.toFixed(1);
  return `${minus(text === "-0.0" ? "0.0" : text)} dB`;
}

/** A short time as one would say it: milliseconds, seconds, minutes. */
export function lasting(seconds: Seconds): string {
  if (seconds < 0.0995) return `${Math.max(1, Math.round(seconds * 1000))} ms`;
  if (seconds < 0.995) return `${10 * Math.round(seconds * 100)} ms`;
  if (seconds < 59.95) return `${seconds < 9.95 ? seconds.toFixed(1) : Math.round(seconds)} s`;
  const whole = Math.round(seconds);
  return `${Math.floor(whole / 60)} min ${whole % 60} s`;
}

/** A moment of a run, as a clock has it: minutes and seconds. */
export const moment = (seconds: Seconds): string =>
  `${Math.floor(seconds / 60)}:${String(Math.floor(seconds % 60)).padStart(2, "0")}`;
