import type { IAudioContext, IAudioParam } from "standardized-audio-context";
import type { Admitted } from "#core/signals/admit.ts";
import type { Seconds } from "#core/units/units.ts";
import { arrival, type Course, gainFor, levelAt } from "./course.ts";
import type { EarMatrix } from "./ear-matrix.ts";
import { buildGraph, type Graph } from "./graph.ts";

/** When a fade begins: a moment later, so that no browser is already past its beginning and cuts it off with a click. */
const fadeDelay: Seconds = 0.003;
const fadeTime: Seconds = 0.01;

export type PlayingGraph = Graph<IAudioContext>;

/** Starts a sound along a course of level; `onEnd` is called when its last sample has been played. */
export function begin(
  context: IAudioContext,
  sound: Admitted,
  through: EarMatrix | undefined,
  course: Course,
  onEnd: () => void,
): PlayingGraph {
  const now = context.currentTime;
  const graph = buildGraph(context, { sound, through, gain: gainFor(levelAt(course, now)) });
  follow(graph.level, course, now);
  graph.source.onended = () => {
    graph.release();
    onEnd();
  };
  graph.source.start();
  return graph;
}

/** Sets a gain on a course of level; a straight line in decibels is an exponential one in gain. */
export function follow(gain: IAudioParam, course: Course, now: Seconds): void {
  gain.cancelScheduledValues(now);
  gain.setValueAtTime(gainFor(levelAt(course, now)), now);
  if (arrival(course) > now) gain.exponentialRampToValueAtTime(gainFor(course.to), arrival(course));
}

/** To zero in 13 ms, for good. */
export function fadeOut({ fade, source }: PlayingGraph, now: Seconds): void {
  fade.setValueAtTime(1, now + fadeDelay);
  fade.linearRampToValueAtTime(0, now + fadeDelay + fadeTime);
  source.stop(now + fadeDelay + fadeTime);
}
