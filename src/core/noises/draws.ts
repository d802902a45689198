import { drawn } from "#core/level/spread.ts";
import type { Feed } from "#core/level/stages.ts";
import { feedTo, usualKnob } from "#core/level/stages.ts";
import { type Random, seeded } from "#core/units/random.ts";
import type { Way } from "./way.ts";

/** A normal deviate of a stream: of twelve uniform numbers, which is near enough. */
export const normal = (random: Random): number => {
  let sum = -6;
  for (let at = 0; at < 12; at++) sum += random();
  return sum;
};

const figures = ["gain", "input noise", "output noise", "most volts", "most input volts"] as const;

/** How far up a knob stands where nobody said: a guess for each draw. Common practice, no source. */
type KnobGuess = (random: Random) => number;
/** As people leave them. */
export const aboutHalf: KnobGuess = (random) => usualKnob + 0.18 * normal(random);
/** Where something is wrong with how they are set. */
export const anywhere: KnobGuess = (random) => 0.1 + 0.9 * random();

/** The way with every number that nobody told drawn anew, and every knob that nobody told of. */
function drawnWay(way: Way, feed: Feed, guess: KnobGuess, random: Random): Feed {
  const stages = feed.stages.map((stage, at) => {
    const told = Object.fromEntries(
      figures.map((name) => {
        const typical = drawn(name, stage.figures[name], normal(random));
        return [name, { ...stage.figures[name], typical }];
      }),
    );
    const turn = guess(random);
    const free = stage.knob !== undefined && way.boxes[at]?.told !== true;
    const knob = free ? Math.min(1, Math.max(0.1, turn)) : stage.knob;
    return { ...stage, knob, figures: { ...stage.figures, ...told } };
  });
  const { sensitivity } = feed.worn;
  const typical = drawn("sensitivity", sensitivity, normal(random));
  return { ...feed, stages, worn: { ...feed.worn, sensitivity: { ...sensitivity, typical } } };
}

/** So many sets of gear are drawn for a way: the same every time. */
export const draws = 240;

/** The same gear every time the way is asked for. */
export function eachDraw<Made>(
  way: Way,
  guess: KnobGuess,
  make: (feed: Feed, random: Random) => Made,
): readonly Made[] {
  const feed = feedTo(way.rig, way.position);
  if (feed === undefined) return [];
  const random = seeded(1);
  return Array.from({ length: draws }, () => make(drawnWay(way, feed, guess, random), random));
}
