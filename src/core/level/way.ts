import type { BuiltRig } from "#core/rig/rig.ts";
import { hissOf, levelOf, withKnobs } from "./advice.ts";
import { type AtEars, atEars } from "./at-ears.ts";
import { type Between, spreadOf, type Unknown, unknownsOf } from "./spread.ts";
import { type Feed, feedTo, type Programme } from "./stages.ts";

/** The way to a position with every circuit solved, also those of the numbers that nobody told: what follows from a knob in the hand costs none. */
export interface Way {
  readonly feed: Feed;
  readonly unknowns: readonly Unknown[];
}

/** Nothing where an instrument stands, or nothing feeds it. */
export function wayTo(rig: BuiltRig, position: string): Way | undefined {
  const feed = feedTo(rig, position);
  return feed && { feed, unknowns: unknownsOf(rig, feed).map(solvedAtEnds) };
}

/** A number of which the way is known with it at both of its ends. */
function solvedAtEnds(one: Unknown): Unknown {
  const { low, high } = one.usual;
  const ends = new Map([low, high].map((end) => [end, one.with(end)]));
  return { ...one, with: (value) => ends.get(value) ?? one.with(value) };
}

/** The same with its knobs set otherwise. */
export const turned = ({ feed, unknowns }: Way, knobs: Feed["stages"][number]["knob"][]): Way => ({
  feed: withKnobs(feed, knobs),
  unknowns: unknowns.map((one) => ({ ...one, with: (value) => withKnobs(one.with(value), knobs) })),
});

/** What there is along a way and at its end, and between what that may lie. */
export interface Reckoned {
  readonly now: AtEars;
  readonly level: Between;
  readonly hiss: Between;
}

/** The louder ear, and the one with more hiss. */
export function reckoned({ feed, unknowns }: Way, programme: Programme): Reckoned {
  const at = new Map<Feed, AtEars>();
  const ears = (one: Feed): AtEars => {
    const known = at.get(one) ?? atEars(one, programme);
    at.set(one, known);
    return known;
  };
  const ends = unknowns.map((one) => {
    const [low, high] = [one.with(one.usual.low), one.with(one.usual.high)];
    return { ...one, with: (value: number) => (value === one.usual.low ? low : high) };
  });
  return {
    now: ears(feed),
    level: spreadOf(feed, ends, (one) => levelOf(ears(one))),
    hiss: spreadOf(feed, ends, (one) => hissOf(ears(one))),
  };
}

/** Whether somebody told any number of the boxes on a way. A source has no gain to be told. */
export const anyTold = ({ stages }: Feed): boolean =>
  stages.some(({ figures: { gain, ...figures } }, at) =>
    [...Object.values(figures), ...(at === 0 ? [] : [gain])].some(({ told }) => told),
  );
