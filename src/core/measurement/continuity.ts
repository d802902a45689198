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
/** A dropout is a tenth of a segment at least. */
const leastMissing = 0.1;
/** More of a stretch than this is no dropout. */
const mostMissing = 0.3;

/** Groups of so many segments in a row, their means. */
const smooth = (values: readonly number[], many: number): readonly number[] =>
  Array.from({ length: Math.floor(values.length / many) }, (_, at) =>
    mean(values.slice(at * many, (at + 1) * many)),
  );

/** The greatest step of the delay from one segment to the next but one, where it is surely one. */
function jump(steps: readonly Step[], least: number): number {
  const late = steps.map((step) => step.late);
  const most = Math.max(
    0,
    ...late.slice(2).map((value, at) => Math.abs(value - (late[at] ?? value))),
  );
  return most > Math.max(least, sure * Math.SQRT2 * jitter(late)) ? most : 0;
}

/** Segments that no more agree with those before. */
function broken(steps: readonly Step[]): number {
  const agreements = steps.slice(2).map(({ agreement }) => agreement);
  const usual = median(agreements);
  const bound = usual - Math.max(leastLost * usual, sure * jitter(agreements));
  return agreements.filter((agreement) => agreement < bound).length;
}

function gapsIn(steps: readonly Step[], rate: Hertz): NotMeasured | undefined {
  const bound = 0.5 / rate;
  const measured = jump(steps, bound);
  if (measured > 0) return { refused: "gaps", measured, bound };
  const segments = broken(steps);
  return segments > 0 ? { refused: "gaps", measured: segments * segmentTime, bound } : undefined;
}

/** How far the delay wanders from where the drift has it. */
function wanderIn(steps: readonly Step[]): NotMeasured | undefined {
  const late = steps.map((step) => step.late);
  const middle = mean(late);
  const bound = Math.max(mostWander, (sure * jitter(late)) / Math.sqrt(8));
  const measured = Math.max(0, ...smooth(late, 8).map((value) => Math.abs(value - middle)));
  return measured > bound ? { refused: "clocks", measured, bound } : undefined;
}

/** What is missing of a tone's course for a short time. */
function missingIn(course: readonly number[]): NotMeasured | undefined {
  const usual = median(course);
  const lost = Math.max(leastMissing * usual, sure * jitter(course));
  const away = course.filter((value) => value < usual - lost);
  if (away.length === 0 || away.length > mostMissing * course.length) return undefined;
  const measured = away.reduce((sum, value) => sum + (1 - value / usual) * segmentTime, 0);
  return { refused: "gaps", measured, bound: leastMissing * segmentTime };
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
    ...courses.map((course) => () => missingIn(course)),
    () => wanderIn(steps),
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
export function continuityOf(
  look: Look,
  spans: readonly Span[],
  rate: Hertz,
): NotMeasured | { readonly drift: number } {
  // Near segments alone: their products tell the drift even where something is missing between.
  const near = driftOf(look, spans, 4);
  for (const span of spans) {
    const fault = faultOfTracks(tracksOf(look, span, near), rate);
    if (fault !== undefined && fault.refused !== "clocks") return fault;
  }
  const drift = driftOf(look, spans, Number.POSITIVE_INFINITY);
  for (const span of spans) {
    const fault = wanderIn(stepsOf(tracksOf(look, span, drift)));
    if (fault !== undefined) return fault;
  }
  if (Math.abs(drift) > mostDrift)
    return { refused: "clocks", measured: drift * 1e6, bound: mostDrift * 1e6 };
  return { drift };
}
