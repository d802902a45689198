import { size } from "#core/units/complex.ts";
import { fromDecibels, toDecibels } from "#core/units/decibels.ts";
import type { Matrix } from "#core/units/matrix.ts";
import type { Decibels, Volts } from "#core/units/units.ts";
import { perVolt } from "./sensitivity.ts";
import type { Feed, Programme, Stage } from "./stages.ts";
import { passedAt } from "./taper.ts";
import { thermalNoise } from "./volts.ts";
import { whiteAsA } from "./weighting.ts";

/** A place on the way: what it carries, and what it can. */
export interface Place {
  readonly part: string;
  readonly at: "input" | "output";
  /** The louder side of the programme, its mean; volts RMS. */
  readonly signal: Volts;
  /** From 20 Hz to 20 kHz. */
  readonly noise: Volts;
  /** A sine of so much is the most it carries. */
  readonly most: Volts;
  /** How much louder it may be until the programme's peaks are cut; below nothing where they are. */
  readonly headroom: Decibels;
}

/** What arrives at an ear: decibels of sound pressure. */
export interface Ear {
  readonly volts: Volts;
  readonly level: Decibels;
  /** White noise from 20 Hz to 20 kHz, unweighted, */
  readonly hiss: Decibels;
  /** and A-weighted. */
  readonly hissA: Decibels;
}

export interface AtEars {
  readonly places: readonly Place[];
  readonly ears: readonly [left: Ear, right: Ear];
  /** The place that is cut first. */
  readonly tightest: Place;
}

/** Two sides of a programme that have nothing in common, in volts, and noises, each in volts squared. */
interface Carried {
  readonly sides: readonly (readonly [Volts, Volts])[];
  readonly noise: readonly number[];
}

/** Each row adds up what it gets of every column: sides as volts with their signs dropped at the end, noises as powers. */
const powers = (matrix: Matrix, noise: readonly number[]): readonly number[] =>
  matrix.map((row) => row.reduce((sum, gain, at) => sum + size(gain) ** 2 * (noise[at] ?? 0), 0));

function through(matrix: Matrix, sides: Carried["sides"]): Carried["sides"] {
  return matrix.map((row) => {
    const side = (which: 0 | 1) =>
      row.reduce((sum, gain, at) => sum + gain.re * (sides[at]?.[which] ?? 0), 0);
    return [side(0), side(1)] as const;
  });
}

const scaled = ({ sides, noise }: Carried, by: number): Carried => ({
  sides: sides.map(([l, r]) => [l * by, r * by] as const),
  noise: noise.map((one) => one * by * by),
});

const loudest = (sides: Carried["sides"]): Volts =>
  Math.max(0, ...sides.map(([l, r]) => Math.hypot(l, r)));

const microvolts = 1e-6;

/** A sine at full scale is so much above the programme. */
const headroomOf = (signal: Volts, most: Volts, { level }: Programme): Decibels =>
  toDecibels(most / Math.max(signal, 1e-12)) + level;

function placeOf(
  part: string,
  at: Place["at"],
  { sides, noise }: Carried,
  most: Volts,
  programme: Programme,
): Place {
  const signal = loudest(sides);
  return {
    part,
    at,
    signal,
    noise: Math.sqrt(Math.max(0, ...noise)),
    most,
    headroom: headroomOf(signal, most, programme),
  };
}

/** Adds noise of its own to each. */
const withNoise = ({ sides, noise }: Carried, own: Volts): Carried => ({
  sides,
  noise: noise.map((one) => one + own * own),
});

/** What a stage makes of what it takes in; the knob stands between its two noises. */
function sentBy(stage: Stage, taken: Carried): Carried {
  const { gain, "input noise": before, "output noise": after } = stage.figures;
  const by = fromDecibels(gain.typical) * (stage.knob === undefined ? 1 : passedAt(stage.knob));
  const inner = withNoise(taken, before.typical * microvolts);
  const sent = {
    sides: through(stage.inside, inner.sides),
    noise: powers(stage.inside, inner.noise),
  };
  return withNoise(scaled(sent, by), after.typical * microvolts);
}

/** What comes over the wires, with the thermal noise of all that hangs there. */
const passedOn = ({ passes, ohms }: Stage, { sides, noise }: Carried): Carried => ({
  sides: through(passes, sides),
  noise: powers(passes, noise).map((one, at) => one + thermalNoise(ohms[at] ?? 0) ** 2),
});

/**
 * Level, noise and headroom along the way to a position, every number as it is told or usual. Sides that have nothing in common add as powers, as do
 * noises; all at 1 kHz.
 */
export function atEars(feed: Feed, programme: Programme): AtEars {
  const places: Place[] = [];
  let carried = programmeOf(feed, programme);
  for (const [at, stage] of feed.stages.entries()) {
    const { "most volts": most, "most input volts": mostIn } = stage.figures;
    if (at > 0) places.push(placeOf(stage.part, "input", carried, mostIn.typical, programme));
    const sent = sentBy(stage, carried);
    places.push(placeOf(stage.part, "output", sent, most.typical, programme));
    carried = passedOn(stage, sent);
  }
  const { inside } = feed.worn;
  if (inside.length > 0)
    carried = { sides: through(inside, carried.sides), noise: powers(inside, carried.noise) };
  const tightest = places.reduce((one, other) => (other.headroom < one.headroom ? other : one));
  return { places, ears: [earOf(feed, carried, 0), earOf(feed, carried, 1)], tightest };
}

/** Full scale of a source is the most it gives with its knob all the way up. */
function programmeOf({ stages: [source] }: Feed, { level }: Programme): Carried {
  const volts = (source?.figures["most volts"].typical ?? 0) * fromDecibels(level);
  return {
    sides: [
      [volts, 0],
      [0, volts],
    ],
    noise: [0, 0],
  };
}

function earOf({ worn }: Feed, { sides, noise }: Carried, at: 0 | 1): Ear {
  const ofOneVolt = perVolt(worn.sensitivity.typical, worn.unit, worn.ohms).value;
  const [l, r] = sides[at] ?? [0, 0];
  const volts = Math.hypot(l, r);
  const hiss = ofOneVolt + toDecibels(Math.sqrt(noise[at] ?? 0));
  return { volts, level: ofOneVolt + toDecibels(volts), hiss, hissA: hiss + whiteAsA };
}
