import { handDrop, levelFloor, startLevel } from "#core/signals/caps.ts";
import type { Decibels, DecibelsFullScale, Seconds } from "#core/units/units.ts";
import { type Course, levelAt, moved, steady } from "./course.ts";

/** The level and whether it is lower than it was before a hand touched something. */
export interface Loudness {
  readonly course: Course;
  /** The level before a hand touched something, until it is reached again; else below any. */
  readonly before: DecibelsFullScale;
}

/** Before the first sound. */
export const quiet: Loudness = { course: steady(startLevel), before: Number.NEGATIVE_INFINITY };

/** Whether a hand has lowered it and it has not been raised again since. */
export const isLowered = ({ course, before }: Loudness): boolean => course.to < before;

/** A step up or down from now on. */
export function stepped({ course, before }: Loudness, by: Decibels, now: Seconds): Loudness {
  const next = moved(course, by, now);
  return { course: next, before: next.to < before ? before : Number.NEGATIVE_INFINITY };
}

/** As a hand leaves it: well below the lesser of where it was now and where it was going. */
export function afterHand({ course, before }: Loudness, now: Seconds): Loudness {
  const level = Math.max(levelFloor, Math.min(levelAt(course, now), course.to) - handDrop);
  return { course: steady(level), before: Math.max(before, course.to) };
}

/** As a trouble leaves it: at the start level, or below if it was. */
export const afterTrouble = ({ course, before }: Loudness): Loudness => ({
  course: steady(Math.min(startLevel, course.to)),
  before,
});

/** At another place: as it was left there, but no louder than it is here. */
export function arriving(there: Loudness, { course }: Loudness, now: Seconds): Loudness {
  const most = Math.min(levelAt(course, now), course.to);
  return { ...there, course: steady(Math.min(there.course.to, most)) };
}
