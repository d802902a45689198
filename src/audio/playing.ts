import type { IAudioContext, IAudioParam } from "standardized-audio-context";
import type { Version } from "#core/hearing/audition.ts";
import type { Decibels, Seconds } from "#core/units/units.ts";
import { type Blend, beginBlend, followBlend, toward } from "./blend.ts";
import { arrival, type Course, gainFor, levelAt } from "./course.ts";
import { buildGraph, type Graph } from "./graph.ts";
import type { Programme } from "./programme.ts";

/** A change of version begins a moment later, so that no browser is already past its beginning and cuts it off with a click. */
const shortestLead: Seconds = 0.003;
/** A change of version can wait for twice what the browser renders at once, to be surely still to come; but no longer. */
const longestLead: Seconds = 0.05;
/** What a browser renders at once that says it is nothing, as Firefox does. */
const unsaid: Seconds = 0.02;

export type PlayingGraph = Graph<IAudioContext>;

/** What a programme begins with. */
export interface Beginning {
  readonly course: Course;
  readonly blend: Blend;
  /** By how much the right is louder than the left, where the programme has a balance. */
  readonly balance: Decibels;
  /** The first channel of the pair it is played on. */
  readonly first: number;
}

/** Starts a programme; `onEnd` is called when its last sample has been played. */
export function begin(
  context: IAudioContext,
  programme: Programme,
  { course, blend, balance, first }: Beginning,
  onEnd: () => void,
): PlayingGraph {
  const now = context.currentTime;
  const gain = gainFor(levelAt(course, now));
  const leaning = programme.balanced ? balance : undefined;
  const graph = buildGraph(context, { ...programme, balance: leaning, gain, first });
  follow(graph.level, course, now);
  if (graph.shares) beginBlend(graph.shares, blend, now);
  graph.source.onended = () => {
    graph.release();
    onEnd();
  };
  graph.source.start(0, programme.leadIn ?? 0);
  return graph;
}

/** Goes over to one version of an audition within 20 ms; the blend that is now under way. */
export function cross(
  context: IAudioContext,
  graph: PlayingGraph,
  blend: Blend,
  heard: Version,
): Blend {
  const lead = Math.max(shortestLead, Math.min(2 * (context.baseLatency || unsaid), longestLead));
  const next = toward(blend, heard, context.currentTime + lead);
  if (graph.shares) followBlend(graph.shares, next);
  return next;
}

/** Sets a gain on a course of level; a straight line in decibels is an exponential one in gain. */
export function follow(gain: IAudioParam, course: Course, now: Seconds): void {
  gain.cancelScheduledValues(now);
  gain.setValueAtTime(gainFor(levelAt(course, now)), now);
  if (arrival(course) > now) gain.exponentialRampToValueAtTime(gainFor(course.to), arrival(course));
}
