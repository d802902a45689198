import { levelCap, levelFloor, levelStep, renderedLevel, stepTime } from "#core/signals/caps.ts";
import { fromDecibels } from "#core/units/decibels.ts";
import type { Decibels, DecibelsFullScale, Seconds } from "#core/units/units.ts";

/**
 * The level over time: from one to another along a straight line in decibels, never steeper than one step in its
 * time, whether or not anything sounds. Times are the audio context's, in seconds.
 */
export interface Course {
  readonly from: DecibelsFullScale;
  readonly to: DecibelsFullScale;
  readonly since: Seconds;
}

/** A level that stays. */
export const steady = (level: DecibelsFullScale): Course => ({ from: level, to: level, since: 0 });

/** When a course has reached its level. */
export const arrival = ({ from, to, since }: Course): Seconds =>
  since + (Math.abs(to - from) / levelStep) * stepTime;

/** The level of a course at a time. */
export function levelAt(course: Course, now: Seconds): DecibelsFullScale {
  const left = arrival(course) - now;
  if (left <= 0) return course.to;
  return course.to - Math.sign(course.to - course.from) * (left / stepTime) * levelStep;
}

/** The course from where the level is now to `by` decibels beyond where it was going, within floor and cap. */
export const moved = (course: Course, by: Decibels, now: Seconds): Course => ({
  from: levelAt(course, now),
  to: Math.min(levelCap, Math.max(levelFloor, course.to + by)),
  since: now,
});

/** The energy of a sound that follows a course from one time to another, full scale RMS for a second being one. */
export function energyOf(course: Course, from: Seconds, to: Seconds): number {
  const settled = Math.min(to, Math.max(from, arrival(course)));
  const [first, last] = [powerAt(course, from), powerAt(course, settled)];
  // A straight line in decibels is an exponential in power: its mean is that of logarithms.
  const ratio = last / first;
  const mean = Math.abs(ratio - 1) < 1e-9 ? first : (last - first) / Math.log(ratio);
  return mean * (settled - from) + powerAt(course, to) * (to - settled);
}

const powerAt = (course: Course, now: Seconds): number => fromDecibels(levelAt(course, now)) ** 2;

/** What the samples of a rendered signal are multiplied by to leave at a level. */
export const gainFor = (level: DecibelsFullScale): number => fromDecibels(level - renderedLevel);
