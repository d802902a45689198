import { toDecibels } from "#core/units/decibels.ts";
import { capWindow, levelCap, peakCap } from "./caps.ts";
import { edgeRise, steepestEdge } from "./edges.ts";
import { offsetOf } from "./offset.ts";
import { RunningMean } from "./running-mean.ts";
import type { Sound } from "./sound.ts";

export type Refusal =
  | "unequal lengths"
  | "empty"
  | "no rate"
  | "not finite"
  | "over the peak cap"
  | "over the level cap"
  | "offset"
  | "no ramps";

/** Why a sound may not be played: what was measured and the bound it broke, in the unit its check names. */
export interface Refused {
  readonly refused: Refusal;
  readonly measured: number;
  readonly bound: number;
}

declare const admitted: unique symbol;

/** A sound that passed `admit`, the only way to get one. Nothing else may be played. */
export type Admitted = Sound & { readonly [admitted]: true };

/** Greatest mean over about a `capWindow`, full scale 1 (-60 dBFS; common practice, no source). */
const offsetBound = 0.001;

type Check = (sound: Sound) => Refused | undefined;

/** In this order, since the later ones rely on the earlier. */
const checks: readonly Check[] = [
  // samples
  ({ left, right }) => above("unequal lengths", Math.abs(left.length - right.length), 0),
  ({ left }) => above("empty", 1 - left.length, 0),
  // hertz
  ({ rate }) =>
    Number.isFinite(rate) && rate > 0
      ? undefined
      : { refused: "no rate", measured: rate, bound: 0 },
  // how many samples
  (sound) => above("not finite", of(sound, countNotFinite), 0),
  // dBFS
  (sound) => above("over the peak cap", toDecibels(of(sound, peak)), peakCap),
  (sound) => above("over the level cap", toDecibels(Math.sqrt(of(sound, power))), levelCap),
  // full scale 1
  (sound) => above("offset", of(sound, offsetOf), offsetBound),
  // part of the peak
  (sound) => above("no ramps", of(sound, steepestEdge), edgeRise),
];

/**
 * Gate one on the way to an ear: a copy of the sound to play, or why not. Refuses what is not finite, has a sample
 * over -12 dBFS, is over -20 dBFS RMS in any 300 ms, is offset, or begins or ends without a ramp anywhere; on either
 * channel. Never throws.
 */
export function admit(sound: Sound): Admitted | Refused {
  const copy = { left: sound.left.slice(), right: sound.right.slice(), rate: sound.rate };
  for (const check of checks) {
    const refused = check(copy);
    if (refused) return refused;
  }
  return copy as unknown as Admitted;
}

const above = (refused: Refusal, measured: number, bound: number): Refused | undefined =>
  measured <= bound ? undefined : { refused, measured, bound };

type Measure = (channel: Float32Array, rate: number) => number;

/** The greater of what both channels measure. */
const of = ({ left, right, rate }: Sound, measure: Measure): number =>
  Math.max(measure(left, rate), measure(right, rate));

const countNotFinite: Measure = (channel) => {
  let count = 0;
  for (let n = 0; n < channel.length; n += 1) if (!Number.isFinite(channel[n])) count += 1;
  return count;
};

const peak: Measure = (channel) => greatest(channel, (sample) => sample);

const power: Measure = (channel, rate) => {
  const mean = new RunningMean(widthOf(rate), channel.length);
  return greatest(channel, (sample) => mean.push(sample * sample));
};

/** Samples in a `capWindow`. */
const widthOf = (rate: number): number => Math.round(capWindow * rate);

/** The greatest that is made of a channel's samples, taken in order. */
function greatest(channel: Float32Array, made: (sample: number) => number): number {
  let most = 0;
  for (let n = 0; n < channel.length; n += 1)
    most = Math.max(most, Math.abs(made(channel[n] ?? 0)));
  return most;
}
