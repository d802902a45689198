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

/** What the samples of a rendered signal are multiplied by to leave at a level. */
export const gainFor = (level: DecibelsFullScale): number => fromDecibels(level - renderedLevel);
