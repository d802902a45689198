import { below } from "#core/listening/normal.ts";
import type { Behaviour } from "#core/rig/behaviour.ts";
import { ears } from "#core/rig/ear-matrix.ts";
import { add, agreement, type Complex, size, subtract, zero } from "#core/units/complex.ts";
import type { Decibels, Probability } from "#core/units/units.ts";

/** What strikes somebody first about an ordinary programme, the most striking first. */
export const impressions = [
  "silent",
  "left ear alone",
  "right ear alone",
  "middle gone",
  "middle wide",
  "faint",
  "crossed",
  "left weaker",
  "right weaker",
  "one side's programme gone",
  "alike",
  "straight",
] as const;
export type Impression = (typeof impressions)[number];

/** Where an impression takes hold, and how far people differ. */
interface Turning {
  readonly at: Decibels;
  readonly spread: Decibels;
}

/**
 * Handbook, sections 5 and 6: a middle 4 to 17 dB down (a return of 10 to 100 Ω) is weaker and wide, gone from 300 Ω on; a sound is
 * in one ear past 15 to 20 dB, and wide while neither side is 10 dB the stronger. The rest, and all spreads: common practice, no source.
 */
const turning = {
  silent: { at: -33, spread: 4 },
  oneEar: { at: 16, spread: 2 },
  gone: { at: -22, spread: 4 },
  weakMiddle: { at: -4.5, spread: 1.5 },
  wide: { at: 10, spread: 2.5 },
  faint: { at: -10, spread: 2.5 },
  crossed: { at: 6, spread: 2 },
  sideGone: { at: 12, spread: 3 },
  weaker: { at: 4, spread: 1.5 },
} as const satisfies Record<string, Turning>;

const over = (level: Decibels, { at, spread }: Turning): Probability =>
  below((level - at) / spread);
const under = (level: Decibels, turn: Turning): Probability => 1 - over(level, turn);

/** Past this, either way, more is the same. */
const most: Decibels = 80;
const between = (a: number, b: number): Decibels => {
  const level = 10 * Math.log10((a + 1e-30) / (b + 1e-30));
  return Math.max(-most, Math.min(most, level));
};

const power = (...gains: readonly Complex[]): number =>
  gains.reduce((sum, gain) => sum + size(gain) ** 2, 0);

/** An ear: what it gets of a voice in the middle, of what stands on the left and of what stands on the right, all as loud. */
interface Ear {
  readonly voice: Complex;
  /** What it would get of a voice in opposite polarity: against `voice`, what the two sides have in common is missing. */
  readonly difference: Complex;
  readonly left: Complex;
  readonly right: Complex;
}

const earsOf = (behaviour: Behaviour): readonly [Ear, Ear] => {
  const [l = [], r = []] = ears(behaviour);
  const ear = ([left = zero, right = zero]: readonly Complex[]): Ear => ({
    voice: add(left, right),
    difference: subtract(left, right),
    left,
    right,
  });
  return [ear(l), ear(r)];
};

const loudness = ({ voice, left, right }: Ear): number => power(voice, left, right);

/** The middle against what differs between the sides. */
const middleOf = ([l, r]: readonly [Ear, Ear]): Decibels =>
  between(power(l.voice, r.voice), power(l.difference, r.difference));

/**
 * How likely each of `impressions` is to strike somebody who hears music with a voice in the middle, some of it on the left and some on the
 * right. One probability for each, in their order; they sum to one. `healthy` is what is heard with nothing wrong.
 */
export function impressionsOf(behaviour: Behaviour, healthy: Behaviour): Float64Array {
  const now = earsOf(behaviour);
  const chances = chancesOf(now, earsOf(healthy), pullOf(behaviour.late * behaviour.worn));
  const all = new Map<Impression, Probability>();
  let left = 1;
  for (const [impression, chance] of chances) {
    all.set(impression, (all.get(impression) ?? 0) + left * chance);
    left *= 1 - chance;
  }
  all.set("straight", left);
  return Float64Array.from(impressions, (impression) => all.get(impression) ?? 0);
}

/** The earlier ear pulls a voice to itself, fully by about 0.7 to 1 ms (handbook, section 5): as if it were this much louder. */
const pullOf = (late: number): Decibels => Math.max(-1, Math.min(1, late / 0.001)) * 20;

/** Each impression in turn, with how likely it is where none before it struck. */
function chancesOf(
  now: readonly [Ear, Ear],
  healthy: readonly [Ear, Ear],
  pull: Decibels,
): readonly (readonly [Impression, Probability])[] {
  const [l, r] = now;
  const loudest = Math.max(...healthy.map(loudness));
  const level = between(Math.max(loudness(l), loudness(r)), loudest);
  const lead = between(loudness(l), loudness(r));
  const alone = over(Math.abs(lead), turning.oneEar);
  const middle = middleOf(now) - middleOf(healthy);
  const crossing = between(power(l.right, r.left), power(l.left, r.right));
  const side = between(power(l.left, r.left), power(l.right, r.right));
  const pulled = between(power(l.voice), power(r.voice)) + pull;
  const weaker = over(Math.abs(pulled), turning.weaker);
  return [
    ["silent", under(level, turning.silent)],
    ...eitherOf("left ear alone", "right ear alone", alone, lead / turning.oneEar.spread),
    ["middle gone", under(middle, turning.gone)],
    ["middle wide", wideness(now, middle)],
    ["faint", under(level, turning.faint)],
    ["crossed", over(crossing, turning.crossed)],
    ...eitherOf("left weaker", "right weaker", weaker, -pulled / turning.weaker.spread),
    ["one side's programme gone", over(Math.abs(side), turning.sideGone)],
    ["alike", over(crossing, { ...turning.crossed, at: -turning.crossed.at })],
  ];
}

/** One of two by chance, the first the likelier the greater `toFirst`: which side is as sure as the difference is large. */
function eitherOf(
  first: Impression,
  second: Impression,
  chance: Probability,
  toFirst: number,
): readonly (readonly [Impression, Probability])[] {
  const one = chance * below(toFirst);
  return [
    [first, one],
    [second, one < 1 ? (chance - one) / (1 - one) : 0],
  ];
}

/** A voice in opposite polarity at the ears has no place; one that is weak beside the sides leaves them wide. */
function wideness([l, r]: readonly [Ear, Ear], middle: Decibels): Probability {
  const apart = Math.abs(between(power(l.voice), power(r.voice)));
  const opposed = agreement(l.voice, r.voice) < 0 ? under(apart, turning.wide) : 0;
  return 1 - (1 - opposed) * over(middle, turning.weakMiddle);
}
