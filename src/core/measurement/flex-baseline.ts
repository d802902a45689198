import { type Complex, real, scale, zero } from "#core/units/complex.ts";
import type { FlexLimit, FlexRefusal } from "./flex-names.ts";

/** How the two tones of one side come in while nothing is wrong. */
export interface FlexSide {
  /** Which of the four tones are this side's: two from here. */
  readonly first: 0 | 2;
  /** The channel it belongs on; none where nothing of it comes. */
  readonly own?: 0 | 1;
  /** The channel where its crosstalk would come. */
  readonly across?: 0 | 1;
  /** Peak sizes on its own channel; where it has none, what the other side makes one expect. */
  readonly sizes: readonly [number, number];
  /** How large it would be on the other channel if it came over whole: that channel's input may be set otherwise. */
  readonly acrossSizes: readonly [number, number];
  /** What does come over, against that, its phase against that on its own channel. */
  readonly crosstalk: readonly [Complex, Complex];
}

/** What was found in the first second. */
export interface FlexBaseline {
  readonly sides: readonly [left: FlexSide, right: FlexSide];
  /** The mean square of what noise adds to a tone, for each channel. */
  readonly noise: readonly [number, number];
  readonly limits: readonly FlexLimit[];
}

/** The first second as numbers: for each channel the middle sizes of the four tones, and noise. */
export interface FlexMiddles {
  readonly sizes: readonly (readonly number[])[];
  readonly noise: readonly number[];
  /** Each tone of a channel on the other one, as sizes, phases against the tone on that channel. */
  readonly crossed: readonly (readonly Complex[])[];
}

/** A side is there when its power is so many times what noise alone would give: 6 dB. */
const there = 4;
/** It is told from crosstalk when it is so many times as strong as on the other channel: 6 dB. */
const clearly = 4;

type Sides = readonly [0 | 1 | undefined, 0 | 1 | undefined];

/** Where both sides are, how strong, and what cannot be seen so; or why not. */
export function baselineOf(middles: FlexMiddles): FlexBaseline | FlexRefusal {
  const owners = ownersOf(middles);
  if (typeof owners === "string") return owners;
  const gains = [0, 1].map((channel) => gainOf(middles, owners, channel as 0 | 1));
  const side = (which: 0 | 1) => sideOf(middles, owners, gains, which);
  const [left, right] = owners;
  return {
    sides: [side(0), side(1)],
    noise: [middles.noise[0] ?? 0, middles.noise[1] ?? 0],
    limits: limitsOf(left, right),
  };
}

function limitsOf(left: 0 | 1 | undefined, right: 0 | 1 | undefined): readonly FlexLimit[] {
  if (right === undefined) return ["left only"];
  if (left === undefined) return ["right only"];
  return left === right ? ["one input"] : [];
}

const powerOf = ({ sizes }: FlexMiddles, channel: number, which: 0 | 1): number => {
  const [a = 0, b = 0] = sizes[channel]?.slice(2 * which, 2 * which + 2) ?? [];
  return a * a + b * b;
};

const present = (middles: FlexMiddles, channel: number, which: 0 | 1): boolean =>
  powerOf(middles, channel, which) > Math.max(least, there * 2 * (middles.noise[channel] ?? 0));

/** Of a square: below this (a peak of -100 dB of full scale) it is no signal, however quiet the input. */
const least = 1e-10;

/** Which channel each side belongs on. */
function ownersOf(middles: FlexMiddles): Sides | FlexRefusal {
  const { length } = middles.sizes;
  const seen = ([0, 1] as const).map((which) =>
    ([0, 1] as const).filter((channel) => channel < length && present(middles, channel, which)),
  );
  const used = new Set(seen.flat());
  if (used.size === 0) return "no signal";
  const [only] = used;
  if (only !== undefined && used.size === 1) return onOne(middles, only);
  const owners = ([0, 1] as const).map((which) => ownerOf(middles, seen[which] ?? [], which));
  const [left, right] = owners;
  if (left === "mixed" || right === "mixed" || (left !== undefined && left === right))
    return "sides mixed";
  return [left, right];
}

/** One channel has it all: a side that is much weaker there than the other is its crosstalk. */
function onOne(middles: FlexMiddles, only: 0 | 1): Sides {
  const [left, right] = [powerOf(middles, only, 0), powerOf(middles, only, 1)];
  return [clearly * left > right ? only : undefined, clearly * right > left ? only : undefined];
}

function ownerOf(middles: FlexMiddles, seen: readonly (0 | 1)[], which: 0 | 1) {
  if (seen.length === 0) return undefined;
  const [one, other] = [powerOf(middles, 0, which), powerOf(middles, 1, which)];
  if (one > clearly * other) return 0;
  return other > clearly * one ? 1 : "mixed";
}

/** The size of a whole side on a channel; nothing where none belongs there. */
function gainOf(middles: FlexMiddles, owners: Sides, channel: 0 | 1): number {
  const which = owners.indexOf(channel);
  return which < 0 ? 0 : Math.sqrt(powerOf(middles, channel, which as 0 | 1));
}

function sideOf(
  middles: FlexMiddles,
  owners: Sides,
  gains: readonly number[],
  which: 0 | 1,
): FlexSide {
  const own = owners[which];
  const other = owners[1 - which];
  const across = acrossOf(own, other, middles.sizes.length);
  const gain = gains[own ?? other ?? 0] ?? 0;
  const to = (across === undefined ? 0 : gains[across]) || gain;
  const first = which === 0 ? 0 : 2;
  const [a, b] = sizesOf(middles, own, first) ?? [gain / Math.SQRT2, gain / Math.SQRT2];
  const whole = [(a * to) / gain, (b * to) / gain] as const;
  const [one = zero, two = zero] =
    across === undefined ? [] : crossedOf(middles, own, across, first);
  return {
    first,
    ...(own === undefined ? {} : { own }),
    ...(across === undefined ? {} : { across }),
    sizes: [a, b],
    acrossSizes: whole,
    crosstalk: [scale(one, 1 / whole[0]), scale(two, 1 / whole[1])],
  };
}

/** Of a side that has no channel of its own there is a size and no phase. */
const crossedOf = (
  { crossed, sizes }: FlexMiddles,
  own: 0 | 1 | undefined,
  across: 0 | 1,
  first: 0 | 2,
): readonly Complex[] =>
  own === undefined
    ? (sizes[across]?.slice(first).map(real) ?? [])
    : (crossed[own]?.slice(first) ?? []);

function sizesOf({ sizes }: FlexMiddles, own: 0 | 1 | undefined, first: 0 | 2) {
  if (own === undefined) return undefined;
  const [a = 0, b = 0] = sizes[own]?.slice(first) ?? [];
  return [a, b] as const;
}

/** The other channel; of a side that has none, the other side's. */
function acrossOf(own: 0 | 1 | undefined, other: 0 | 1 | undefined, channels: number) {
  if (own === undefined) return other;
  if (own === other || channels < 2) return undefined;
  return own === 0 ? 1 : 0;
}
