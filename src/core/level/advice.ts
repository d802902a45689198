import type { Decibels } from "#core/units/units.ts";
import { type AtEars, atEars } from "./at-ears.ts";
import type { Feed, Programme, Stage } from "./stages.ts";
import { knobFor, knobLevel, passedAt } from "./taper.ts";

/** Further down than this the sides of a ganged knob differ: the last one is not asked to go there, as long as another can. Common practice, no source. */
const lowestUseful: Decibels = -40;

/** Where to set every knob of a way, in the order of its stages. */
export interface Advice {
  /** From nought to one; nothing where a stage has none. */
  readonly knobs: readonly (number | undefined)[];
  /** What there is at the ears then. */
  readonly then: AtEars;
  /** The level wanted is not reached without cutting peaks, or not at all: so much is missing. */
  readonly short: Decibels;
}

/** The way with its knobs set otherwise. */
export const withKnobs = (feed: Feed, knobs: readonly (number | undefined)[]): Feed => ({
  ...feed,
  stages: feed.stages.map((stage, at) => {
    const knob = stage.knob === undefined ? undefined : knobs[at];
    return knob === undefined ? stage : { ...stage, knob };
  }),
});

/** The louder ear. */
export const levelOf = ({ ears }: AtEars): Decibels => Math.max(ears[0].level, ears[1].level);
/** The ear with more hiss. */
export const hissOf = ({ ears }: AtEars): Decibels => Math.max(ears[0].hiss, ears[1].hiss);

const turnable = ({ knob }: Stage): boolean => knob !== undefined;

/** Nearly nothing, for rounding. */
const hair: Decibels = 1e-9;

/**
 * Where to set every knob so that the hiss at the ears is least for a level wanted, with no peak cut. Noise that comes in behind a knob is heard the less, the
 * more of the whole gain lies before it, and the whole gain is given: so each knob, from the first, is as high as stays clean, and the last makes up. The
 * last does not go where it is uneven, as long as those before it can go down instead.
 */
export function adviceFor(feed: Feed, programme: Programme, wanted: Decibels): Advice {
  const open = withKnobs(
    feed,
    feed.stages.map(() => 1),
  );
  const all = atEars(open, programme);
  const turned = feed.stages.filter(turnable);
  const needed = neededFor(open, all);
  const spare = levelOf(all) - wanted;
  const down = shared(needed, spare, turned.length);
  let next = 0;
  const knobs = feed.stages.map((stage) =>
    stage.knob === undefined ? undefined : knobFor(-(down[next++] ?? 0)),
  );
  const then = atEars(withKnobs(feed, knobs), programme);
  return { knobs, then, short: Math.max(0, wanted - levelOf(then)) };
}

/** How far all knobs up to each must be down together, so that nothing up to the next is cut. */
function neededFor({ stages }: Feed, { places }: AtEars): readonly Decibels[] {
  const needed: Decibels[] = [];
  let most = 0;
  for (const [at, { part, knob }] of stages.entries()) {
    const after = places.filter(
      (place) =>
        (place.part === part && place.at === "output") ||
        (place.part === stages[at + 1]?.part && place.at === "input"),
    );
    most = Math.max(most, ...after.map(({ headroom }) => -headroom));
    if (knob !== undefined) needed.push(Math.max(0, most));
    else if (needed.length > 0) needed[needed.length - 1] = Math.max(0, most);
  }
  return needed;
}

/** How far each knob goes down: as the needs have it, the rest at the last, and what that cannot at the one before. */
function shared(needed: readonly Decibels[], spare: Decibels, count: number): readonly Decibels[] {
  const sums = needed.map((own, at) => Math.max(own, ...needed.slice(0, at)));
  const down = sums.map((own, at) => own - (sums[at - 1] ?? 0));
  let rest = spare - (sums.at(-1) ?? 0);
  for (let at = count - 1; at >= 0 && rest > hair; at -= 1) {
    const room = at === 0 ? rest : Math.max(0, -lowestUseful - (down[at] ?? 0));
    const own = Math.min(rest, room);
    down[at] = (down[at] ?? 0) + own;
    rest -= own;
  }
  return down;
}

/** With nothing known: the first half way up, as high as the rest needs it then. Common practice, no source. */
export function ruleOfThumb(
  feed: Feed,
  programme: Programme,
  wanted: Decibels,
): readonly (number | undefined)[] {
  const turned = feed.stages.flatMap(({ knob }, at) => (knob === undefined ? [] : [at]));
  const last = turned.at(-1);
  const knobs = feed.stages.map(({ knob }, at) => {
    if (knob === undefined) return undefined;
    return at === last ? 1 : 0.5;
  });
  if (last === undefined) return knobs;
  const level = levelOf(atEars(withKnobs(feed, knobs), programme));
  const own = knobFor(wanted - level);
  // Where the last all the way up is not enough, those before go up.
  if (level >= wanted) return knobs.map((knob, at) => (at === last ? own : knob));
  const first = turned[0] ?? last;
  const up = knobFor(Math.min(0, knobLevel(first === last ? 1 : 0.5) + wanted - level));
  return knobs.map((knob, at) => (at === first && first !== last ? up : knob));
}

/** How far down a knob is, decibels. */
export const downOf = (knob: number): Decibels => 20 * Math.log10(Math.max(1e-6, passedAt(knob)));
