import type { Hertz } from "#core/units/units.ts";
import type { Look } from "./look.ts";
import { driftOf, type Span } from "./pace.ts";
import type { NotMeasured } from "./return.ts";
import { segmentTime } from "./segments.ts";
import { jitter, mean, median } from "./statistics.ts";
import {
  type Band,
  courseOf,
  powerOf,
  type Step,
  stepsOf,
  type Track,
  tracksOf,
} from "./steady.ts";

/** Nothing is found fault with that chance brings about in so many standard deviations. */
const sure = 8;
/** Agreement lost at a gap of one sample at 96 kHz, on a flat channel, is twice this. */
const leastLost = 0.08;
/** Clocks that wander so far from a straight line turn the highest tones by half a radian. */
const mostWander = 5e-6;
/** A level that changes by more is changed by something. */
const mostChange = 1;
const mostDrift = 310e-6;
/** A step is so much greater than what the delay does all the time. */
const sudden = 6;
/** A dropout is a tenth of a segment at least. */
const leastMissing = 0.1;
/** What a segment is held against: so many on either side. */
const nearby = 8;

/** Groups of so many segments in a row, their means. */
const smooth = (values: readonly number[], many: number): readonly number[] =>
  Array.from({ length: Math.floor(values.length / many) }, (_, at) =>
    mean(values.slice(at * many, (at + 1) * many)),
  );

/** The greatest step of the delay from one segment to the next but one, where it is surely one. */
function jump(steps: readonly Step[], least: number): number {
  const late = steps.map((step) => step.late);
  const changes = late.slice(2).map((value, at) => Math.abs(value - (late[at] ?? value)));
  const most = Math.max(0, ...changes);
  const usual = median(changes);
  return most > Math.max(least, sure * Math.SQRT2 * jitter(late), sudden * usual) ? most : 0;
}

/** Segments that no more agree with those before. */
function broken(steps: readonly Step[]): number {
  const agreements = steps.slice(2).map(({ agreement }) => agreement);
  const usual = median(agreements);
  const bound = usual - Math.max(leastLost * usual, sure * jitter(agreements));
  return agreements.filter((agreement) => agreement < bound).length;
}

function gapsIn(steps: readonly Step[], rate: Hertz): NotMeasured | undefined {
  const bound = 0.6 / rate;
  const measured = jump(steps, bound);
  if (measured > 0) return { refused: "gaps", measured, bound };
  const segments = broken(steps);
  return segments > 0 ? { refused: "gaps", measured: segments * segmentTime, bound } : undefined;
}

/** Numbers less the straight line through them. */
function levelled(values: readonly number[]): readonly number[] {
  const [middle, level] = [(values.length - 1) / 2, mean(values)];
  const spread = mean(values.map((_, at) => (at - middle) ** 2));
  const slope = mean(values.map((value, at) => (at - middle) * (value - level))) / (spread || 1);
  return values.map((value, at) => value - slope * (at - middle));
}

/** How far the delay wanders from where the drift has it, or, as long as that is not known well, from any straight line. */
function wanderIn(steps: readonly Step[], straight = false): NotMeasured | undefined {
  const late = straight ? levelled(steps.map((step) => step.late)) : steps.map((step) => step.late);
  const middle = mean(late);
  const bound = Math.max(mostWander, (sure * jitter(late)) / Math.sqrt(8));
  const measured = Math.max(0, ...smooth(late, 8).map((value) => Math.abs(value - middle)));
  return measured > bound ? { refused: "clocks", measured, bound } : undefined;
}

/** What is usual about a place of a course. */
const usualAt = (course: readonly number[], at: number): number =>
  median(course.slice(Math.max(0, at - nearby), at + nearby + 1));

/** What is missing of a tone's course for a short time. */
function missingIn(course: readonly number[]): NotMeasured | undefined {
  const chance = sure * jitter(course);
  const lost = course.map((value, at) => {
    const usual = usualAt(course, at);
    return usual - value > Math.max(leastMissing * usual, chance) ? 1 - value / usual : 0;
  });
  const measured = lost.reduce((sum, part) => sum + part * segmentTime, 0);
  return measured > 0
    ? { refused: "gaps", measured, bound: leastMissing * segmentTime }
    : undefined;
}

/** How much a level changes over a stretch, decibels. */
function changeIn(course: readonly number[]): NotMeasured | undefined {
  const many = 8;
  const levels = smooth(course, many);
  const [least, most] = [Math.min(...levels), Math.max(...levels)];
  const usual = Math.abs(median(course));
  if (most - least < ((sure * jitter(course)) / Math.sqrt(many)) * Math.SQRT2) return undefined;
  const measured = 20 * Math.log10(most / Math.max(least, 1e-3 * usual));
  return measured > mostChange ? { refused: "processed", measured, bound: mostChange } : undefined;
}

const whole: Band = { from: 0, to: Number.POSITIVE_INFINITY };
const bands: readonly Band[] = [0, 30, 60, 90].map((from) => ({ from, to: from + 30 }));

/** A comb leaks a little into the other within a segment: only what is as strong, but for this, is looked at, */
const leak = 0.1;
/** and no band that next to nothing of comes through. */
const carried = 1e-4;

/** The courses worth looking at in some bands. */
function coursesIn(
  tracks: readonly Track[],
  among: readonly Band[],
): readonly (readonly number[])[] {
  const most = Math.max(...tracks.map((track) => powerOf(track, whole)));
  return tracks.flatMap((track) => {
    const beside = tracks.filter(({ channel }) => channel === track.channel);
    return among
      .filter((band) => {
        const others = Math.max(...beside.map((one) => powerOf(one, band)));
        return powerOf(track, band) > Math.max(leak * others, carried * most);
      })
      .map((band) => courseOf(track, band));
  });
}

function faultOfTracks(tracks: readonly Track[], rate: Hertz): NotMeasured | undefined {
  const steps = stepsOf(tracks);
  const courses = coursesIn(tracks, [whole]);
  const faults = [
    () => gapsIn(steps, rate),
    () => wanderIn(steps, true),
    ...courses.map((course) => () => missingIn(course)),
    ...courses.map((course) => () => changeIn(course)),
    ...coursesIn(tracks, bands).map((course) => () => changeIn(course)),
  ];
  for (const fault of faults) {
    const found = fault();
    if (found !== undefined) return found;
  }
  return undefined;
}

/** Whether the tones of a capture go on evenly, as a measurement needs. Without, the drift of the clocks as a part of one. */
export function goingOn(
  look: Look,
  spans: readonly Span[],
  rate: Hertz,
): NotMeasured | { readonly drift: number } {
  // Near segments alone: their products tell the drift even where something is missing between.
  const near = driftOf(look, spans, 4);
  const far = farApart(near);
  if (far !== undefined) return far;
  for (const span of spans) {
    const fault = faultOfTracks(tracksOf(look, span, near), rate);
    if (fault !== undefined) return fault;
  }
  const drift = driftOf(look, spans, Number.POSITIVE_INFINITY);
  for (const span of spans) {
    const fault = wanderIn(stepsOf(tracksOf(look, span, drift)));
    if (fault !== undefined) return fault;
  }
  return farApart(drift) ?? { drift };
}

const farApart = (drift: number): NotMeasured | undefined =>
  Math.abs(drift) > mostDrift
    ? { refused: "clocks", measured: drift * 1e6, bound: mostDrift * 1e6 }
    : undefined;
