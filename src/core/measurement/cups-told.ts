import type { Decibels, DecibelsFullScale } from "#core/units/units.ts";
import { type Cup, type CupHeard, type Cups, cupOf, cupsBeside } from "./cup.ts";
import type { Estimate, NotMeasured } from "./return.ts";

/** One cup at the microphone, and the level at which the signal left the program meanwhile. */
export interface CupTaken {
  readonly heard: CupHeard;
  readonly level: DecibelsFullScale;
}

/** All that is told of two cups, the left first. */
export interface CupsTold {
  readonly cups: readonly [left: Cup, right: Cup];
  /** By how much the right one is the louder; nothing where one of them gives nothing. */
  readonly apart: Decibels | undefined;
  readonly polarity: Cups["polarity"];
  /** Each cup's distortion, root mean square against its tones; nothing where it cannot be told. */
  readonly distortion: readonly [left: Estimate | undefined, right: Estimate | undefined];
  /** The cup that buzzes or rattles, by its number. */
  readonly buzzing: 0 | 1 | undefined;
  /** What the cups may give of the left and of the right programme: one possibility for every sign that could not be told. */
  readonly possible: readonly Cups["gains"][];
}

/** Distortion counts as buzz where it is a hundredth of the tones, and ten times the other cup's power. Common practice, no source. */
const leastBuzz = 0.01;
const above = 10;
/** What is so many standard deviations out of the noise is there. */
const sure = 3;

/** What two cups are, beside each other; or why one of them was not measured. Cups need not have been played at one level. */
export function cupsTold(left: CupTaken, right: CupTaken): CupsTold | NotMeasured {
  const beside = cupsBeside(left.heard, right.heard);
  if ("refused" in beside) return beside;
  const cups = [cupOf(left.heard), cupOf(right.heard)] as const;
  const [one, other] = cups;
  if ("refused" in one) return one;
  if ("refused" in other) return other;
  const distortion = [distortionOf(left.heard), distortionOf(right.heard)] as const;
  const louder = right.level - left.level;
  const both = one.carries !== "neither" && other.carries !== "neither";
  return {
    cups: [one, other],
    apart: both ? beside.apart - louder : undefined,
    polarity: both ? beside.polarity : undefined,
    distortion,
    buzzing: both ? buzzingOf(distortion) : undefined,
    possible: possibleOf([one, other], beside, 10 ** (-louder / 20)),
  };
}

/** Of both orders together. */
function distortionOf(heard: CupHeard): Estimate | undefined {
  if ("refused" in heard) return undefined;
  const distortion = heard.inputs[0]?.distortion;
  if (distortion === undefined) return undefined;
  const { second, third } = distortion;
  return {
    value: Math.hypot(second.value, third.value),
    error: Math.hypot(second.error, third.error),
  };
}

function buzzingOf([left, right]: CupsTold["distortion"]): 0 | 1 | undefined {
  if (left === undefined || right === undefined) return undefined;
  if (buzzes(left, right)) return 0;
  return buzzes(right, left) ? 1 : undefined;
}

/** The power of one is surely more than so many times the most that the other may have. */
function buzzes(one: Estimate, other: Estimate): boolean {
  const least = one.value ** 2 - sure * one.error ** 2;
  const most = other.value ** 2 + sure * other.error ** 2;
  return one.value >= leastBuzz && least >= above * most;
}

type Row = readonly [number, number];

/** A row as it is, and where it is not known how its two belong together the other way too. */
const rows = ({ carries, sign }: Cup, [left, right]: Row): readonly Row[] =>
  carries === "both" && sign === undefined
    ? [
        [left, right],
        [left, -right],
      ]
    : [[left, right]];

function possibleOf(
  [left, right]: CupsTold["cups"],
  { polarity, gains }: Cups,
  scale: number,
): readonly Cups["gains"][] {
  const signs = polarity === undefined ? [scale, -scale] : [scale];
  return rows(left, gains[0]).flatMap((one) =>
    rows(right, gains[1]).flatMap((other) =>
      signs.map((by): Cups["gains"] => [one, [by * other[0], by * other[1]]]),
    ),
  );
}
