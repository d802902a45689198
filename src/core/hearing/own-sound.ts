import type { Sound } from "#core/signals/sound.ts";
import type { Hertz, Seconds } from "#core/units/units.ts";
import { fullSize, type Lifted, scaled } from "./full-size.ts";
import { gainWithin, greater, rendered } from "./measure.ts";

/** Why a sound of the listener's own cannot be used. */
export const ownTroubles = [
  /** A sample is infinite or not a number. */
  "not finite",
  /** Shorter than half a second, or no channel at all. */
  "too short",
  /** Nothing above -80 dBFS in the first minute. */
  "silent",
  /** It begins or ends abruptly so often that no ramps help. */
  "only clicks",
] as const;
export type OwnTrouble = (typeof ownTroubles)[number];

/** What was left out of it, for the listener to be told. */
export const ownNotes = ["first minute only", "first two channels only"] as const;
export type OwnNote = (typeof ownNotes)[number];

/** A sound of the listener's own, as loud as a test signal and fit for gate one. */
export interface OwnSound {
  readonly sound: Sound;
  readonly notes: readonly OwnNote[];
}

export interface NotOwn {
  readonly refused: OwnTrouble;
}

/** As much of it as is heard, from its beginning. */
export const longestOwn: Seconds = 60;
const shortest: Seconds = 0.5;
/** Below this it is silence (-80 dBFS; common practice, no source). */
const silent = 1e-4;
/** Offset and what is slower than any sound is taken away below this (common practice, no source). */
const lowest: Hertz = 10;

/**
 * Samples of any sound, brought to where a test signal is: the first minute; one channel on both sides, of several the first
 * two; without offset, with ramps at both ends and after pauses; its loudest 300 ms at the rendered level, or lower where a
 * peak or a deep bass would else be too great for the caps. Never throws. A minute takes half a second in one piece: silence
 * what plays before, since a press of silence would wait.
 * @param channels samples of each channel, full scale 1; of unequal lengths as long as the shortest
 * @param rate sampling rate in hertz
 */
export function ownSound(channels: readonly Float32Array[], rate: Hertz): OwnSound | NotOwn {
  const length = Math.min(
    ...channels.map((channel) => channel.length),
    Math.round(longestOwn * rate),
  );
  if (channels.length === 0 || !(length >= shortest * rate)) return { refused: "too short" };
  const used = channels.slice(0, 2).map((channel) => channel.subarray(0, length));
  if (!used.every((channel) => channel.every(Number.isFinite))) return { refused: "not finite" };
  const lifted = used.map((channel) => fullSize(withoutOffset(channel, rate), rate, silent));
  const [first, second] = lifted.length === 1 ? [...lifted, ...lifted] : lifted;
  if (first === undefined || second === undefined) return { refused: "only clicks" };
  if (first.lift + second.lift === 0) return { refused: "silent" };
  const gain = gainWithin(greater(first.own, second.own), rendered);
  const side = ({ samples, lift }: Lifted) => scaled(samples, lift === 0 ? 0 : gain / lift);
  const sound = { left: side(first), right: side(second), rate };
  return { sound, notes: notesOf(channels, rate) };
}

function notesOf(channels: readonly Float32Array[], rate: Hertz): readonly OwnNote[] {
  const cut = channels.every((channel) => channel.length > longestOwn * rate);
  return [
    ...(cut ? (["first minute only"] as const) : []),
    ...(channels.length > 2 ? (["first two channels only"] as const) : []),
  ];
}

/** The channel without its mean, behind two first-order high-passes. */
function withoutOffset(channel: Float32Array, rate: Hertz): Float32Array {
  const keep = 1 / (1 + (2 * Math.PI * lowest) / rate);
  const mean = channel.reduce((sum, sample) => sum + sample, 0) / channel.length;
  let [before, once, twice] = [0, 0, 0];
  return channel.map((sample) => {
    const centred = sample - mean;
    const passed = keep * (once + centred - before);
    twice = keep * (twice + passed - once);
    [before, once] = [centred, passed];
    return twice;
  });
}
