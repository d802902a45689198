import type { Socket, Tie } from "#core/parts/part.ts";
import type { Behaviour } from "#core/rig/behaviour.ts";
import { type Effect, effectOf, type Gains, signed } from "#core/rig/effect.ts";
import { reachInto } from "#core/rig/reach.ts";
import { type BuiltRig, socketOf } from "#core/rig/rig.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import { toDecibels } from "#core/units/decibels.ts";
import type { Decibels } from "#core/units/units.ts";
import { arrivingAt } from "./arriving.ts";
import { type HumRisk, humInto, humRisk } from "./hum.ts";
import { greatest, type Panning, panningOf } from "./panning.ts";
import { type Strain, strainsInto } from "./strain.ts";
import { bands, type Tone, toneOf } from "./tone.ts";

/** What a patch will sound like, before anything is plugged in. */
export interface Prediction {
  /** Real gains with the sign they mostly have, volts for one volt of the programme on one leg, at 1 kHz. */
  readonly gains: Gains;
  readonly effect: Effect;
  /** The most that either side of the programme gives each ear, against the output's own voltage on one leg. */
  readonly level: readonly [left: Decibels, right: Decibels];
  readonly panning: Panning;
  readonly tone: Tone;
  readonly hum: HumRisk;
  readonly strains: readonly Strain[];
  /** What its level hangs on, from the sockets it leaves by. */
  readonly ties: readonly Tie[];
  readonly harms: readonly NonNullable<Socket["harms"]>[];
}

/** The part of a prediction that what somebody wants hangs on; quick to work out. */
export type Sounds = Pick<Prediction, "effect" | "ties">;

/** What arrives at a part, in a word. */
export function soundAt(rig: BuiltRig, part: string): Sounds {
  const gains = signed(arrivingAt(rig, part).gains, 1);
  return { effect: effectOf(gains), ties: tiesOf(socketsOut(rig, part)) };
}

const tiesOf = (sockets: readonly Socket[]): readonly Tie[] => [
  ...new Set(sockets.flatMap(({ ties = [] }) => ties)),
];

/** What arrives at a part, an amplifier or headphones, by the way it is fed in a rig. */
export function predictionAt(
  rig: BuiltRig,
  part: string,
  faults: readonly RigFault[] = [],
): Prediction {
  const [low, middle, high] = bands.map((at) => arrivingAt(rig, part, faults, at));
  if (low === undefined || middle === undefined || high === undefined)
    throw new Error("there are three bands");
  const gains = signed(middle.gains, 1);
  const sockets = socketsOut(rig, part);
  return {
    gains,
    effect: effectOf(gains),
    level: levelsOf(gains),
    panning: panningOf(middle, reference(middle)),
    tone: toneOf(low, middle, high),
    hum: humRisk(humInto(rig, part, faults)),
    strains: strainsInto(rig, part, faults),
    ties: tiesOf(sockets),
    harms: sockets.flatMap(({ harms }) => harms ?? []),
  };
}

/** Levels are judged by the loudest there is, but for a way on which nearly nothing comes. */
const reference = (way: Behaviour): number => Math.max(greatest(way), 0.05);

const levelsOf = ([ll, lr, rl, rr]: Gains): readonly [Decibels, Decibels] => [
  toDecibels(Math.max(Math.abs(ll), Math.abs(lr))),
  toDecibels(Math.max(Math.abs(rl), Math.abs(rr))),
];

/** The sockets that a part's feed leaves the box before it by. */
function socketsOut(rig: BuiltRig, part: string): readonly Socket[] {
  const { from, ends } = reachInto(rig, part);
  const names = ends.filter(({ into }) => into === from).map(({ socket }) => socket);
  return [...new Set(names)].map((name) => socketOf(rig.part(from), name));
}
