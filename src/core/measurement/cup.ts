import type { Decibels, Hertz, Seconds } from "#core/units/units.ts";
import type { NotMeasured, ReturnMeasurement } from "./measured.ts";
import type { Gain } from "./return.ts";

/** What was recorded while the multitone played and a cup was held to a microphone, measured. */
export type CupHeard = ReturnMeasurement | NotMeasured;

/** Which programmes a cup carries. */
type Carries = "left" | "right" | "both" | "neither";

/** What one earcup gives a microphone, over the band of the idents. */
export interface Cup {
  readonly carries: Carries;
  /** Of each programme, against what is played; next to nothing where only noise is. Another microphone gives other numbers. */
  readonly left: Decibels;
  readonly right: Decibels;
  /** Whether both programmes push it the same way, or against each other; nothing where it carries but one, or it cannot be told. */
  readonly sign: 1 | -1 | undefined;
  /** Buzz and rattle: what distortion makes, decibels against what is played; nothing where it cannot be told. */
  readonly buzz: Decibels | undefined;
}

/** Both cups beside each other. */
export interface Cups {
  /** By how much the right cup is the louder, each in the programme that it carries most. */
  readonly apart: Decibels;
  /** Whether both push the same way, told from 100 to 800 Hz; nothing where it cannot be told, or one is dead. Which of them is the right one cannot be heard. */
  readonly polarity: 1 | -1 | undefined;
  /**
   * Of each cup, the left first, what it gives of the left and of the right programme: amplitudes with a sign, of any scale. Where a polarity is not to be
   * told it is the same.
   */
  readonly gains: readonly [left: readonly [number, number], right: readonly [number, number]];
}

/** The band of the idents. */
const idents = { from: 200, to: 4000 };
/** Where a cup at a microphone is small against the wave, so that where it is held changes no polarity (common practice, no source). */
const low = { from: 100, to: 800 };
/** A programme so far below the other is what leaks, not what is carried: the cups' own crosstalk and the room. Common practice, no source. */
const leaks: Decibels = 20;
/** It must stand out of the noise by so much. */
const out: Decibels = 3;

type Point = Gain & { readonly frequency: Hertz };

/** The tones of one programme in a band, from the input that has the more of it. */
const pointsOf = (
  { responses }: ReturnMeasurement,
  input: number,
  programme: number,
  { from, to }: typeof low,
): readonly Point[] =>
  responses
    .filter(({ frequency }) => frequency >= from && frequency <= to)
    .flatMap(({ frequency, gains }) => {
      const gain = gains[input]?.[programme];
      return gain ? [{ frequency, ...gain }] : [];
    });

const power = ({ re, im }: Gain): number => re * re + im * im;
const mean = (some: readonly number[]): number =>
  some.reduce((sum, one) => sum + one, 0) / Math.max(1, some.length);
const decibels = (ratio: number): Decibels => 10 * Math.log10(Math.max(ratio, 1e-30));

/** The level of some tones without what noise adds, and by how much it stands out. */
function levelOf(points: readonly Point[]): { level: Decibels; above: Decibels } {
  const noise = mean(points.map(({ error }) => 2 * error * error));
  const all = mean(points.map(power));
  return { level: decibels(Math.max(all - noise, noise / 100)), above: decibels(all / noise) };
}

/** The input in which a cup is heard: a microphone may come on both. */
const inputOf = ({ inputs }: ReturnMeasurement): number =>
  inputs.findIndex(({ tones }) => tones === Math.max(...inputs.map((one) => one.tones)));

/** What a cup gives, from the multitone played to it while it was held to a microphone. One that is not heard at all is dead, or was not held there. */
export function cupOf(measured: CupHeard): Cup | NotMeasured {
  if (!("refused" in measured)) return heardIn(measured);
  return measured.refused === "too quiet" ? dead : measured;
}

function heardIn(measured: ReturnMeasurement): Cup {
  const input = inputOf(measured);
  const points = programmes.map((programme) => pointsOf(measured, input, programme, idents));
  const [left = absent, right = absent] = points.map(levelOf);
  const least = Math.max(left.level, right.level) - leaks;
  const [inLeft = false, inRight = false] = [left, right].map(
    ({ level, above }) => above > out && level > least,
  );
  const distortion = measured.inputs[input]?.distortion;
  return {
    carries: carriesOf(inLeft, inRight),
    left: left.level,
    right: right.level,
    sign: inLeft && inRight ? signOf(points[0] ?? [], points[1] ?? [], 0) : undefined,
    buzz: distortion && decibels(distortion.second.value ** 2 + distortion.third.value ** 2),
  };
}

const programmes = [0, 1] as const;
const nothing: Decibels = -300;
const absent = { level: nothing, above: nothing };
const dead: Cup = {
  carries: "neither",
  left: nothing,
  right: nothing,
  sign: undefined,
  buzz: undefined,
};

function carriesOf(left: boolean, right: boolean): Carries {
  if (left && right) return "both";
  if (left) return "left";
  return right ? "right" : "neither";
}

/** How far one cup may be held nearer than the other, and a half of what the delay of a whole is out by; seconds. 0.25 ms is 8 cm. */
const furthest: Seconds = 0.00025;
const step: Seconds = 0.000005;
/** The better of two polarities must fit so many times as well as the other, and so well at all. */
const clearly = 1.5;
const leastAlike = 0.4;

/**
 * Whether two rows of tones have the same sign, whichever comes earlier by up to a time: every tone as strong as it is sure, since a room makes some
 * strong and some weak. Nothing where neither sign fits.
 */
function signOf(
  one: readonly Point[],
  other: readonly Point[],
  within: Seconds,
): 1 | -1 | undefined {
  const at = new Map(other.map((point) => [point.frequency, point]));
  const crossed = one.flatMap((a) => {
    const b = at.get(a.frequency);
    if (b === undefined) return [];
    const size = Math.sqrt(power(a) * power(b)) + 1e-30;
    const sure = size / (size + a.error * b.error + a.error ** 2 + b.error ** 2);
    const [re, im] = [a.re * b.re + a.im * b.im, a.re * b.im - a.im * b.re];
    return [{ frequency: a.frequency, re: (sure * re) / size, im: (sure * im) / size, sure }];
  });
  const whole = crossed.reduce((sum, { sure }) => sum + sure, 0);
  if (crossed.length < 4) return undefined;
  let [same, opposite] = [0, 0];
  for (let late = -within; late <= within; late += step) {
    const sum = crossed.reduce((sum, { frequency, re, im }) => {
      const turn = 2 * Math.PI * frequency * late;
      return sum + re * Math.cos(turn) - im * Math.sin(turn);
    }, 0);
    same = Math.max(same, sum / whole);
    opposite = Math.max(opposite, -sum / whole);
  }
  const [more, less] = [Math.max(same, opposite), Math.min(same, opposite)];
  if (more < leastAlike || more < clearly * less) return undefined;
  return same > opposite ? 1 : -1;
}

/** The programme of a cup that it carries most. */
const mostOf = ({ left, right }: Cup): 0 | 1 => (left >= right ? 0 : 1);

/** Two cups of one set beside each other, held to the same microphone one after the other at one level; or why one of them was not measured. */
export function cupsBeside(left: CupHeard, right: CupHeard): Cups | NotMeasured {
  const [one, other] = [cupOf(left), cupOf(right)];
  if ("refused" in one) return one;
  if ("refused" in other) return other;
  const polarity = polarityOf([left, mostOf(one)], [right, mostOf(other)]);
  const apart = Math.max(other.left, other.right) - Math.max(one.left, one.right);
  return { apart, polarity, gains: [gainsOf(one, 1), gainsOf(other, polarity ?? 1)] };
}

type Most = readonly [heard: CupHeard, programme: 0 | 1];

function polarityOf([left, a]: Most, [right, b]: Most): Cups["polarity"] {
  if ("refused" in left || "refused" in right) return undefined;
  return signOf(
    pointsOf(left, inputOf(left), a, low),
    pointsOf(right, inputOf(right), b, low),
    furthest,
  );
}

/** What a cup gives of each programme, the stronger one with a sign. */
function gainsOf(cup: Cup, sign: 1 | -1): readonly [number, number] {
  const size = (level: Decibels) => (cup.carries === "neither" ? 0 : 10 ** (level / 20));
  const other = sign * (cup.sign ?? 1);
  return mostOf(cup) === 0
    ? [sign * size(cup.left), other * size(cup.right)]
    : [other * size(cup.left), sign * size(cup.right)];
}
