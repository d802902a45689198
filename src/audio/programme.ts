import type { Arrival, Audition, Version } from "#core/hearing/audition.ts";
import { type Admitted, admit } from "#core/signals/admit.ts";
import { renderedLevel } from "#core/signals/caps.ts";
import { type SignalName, signals } from "#core/signals/catalogue.ts";
import { render } from "#core/signals/render.ts";
import type { Sound } from "#core/signals/sound.ts";
import { fromDecibels } from "#core/units/decibels.ts";
import type { DecibelsFullScale, Hertz, Seconds } from "#core/units/units.ts";
import { type EarMatrix, tamed } from "./ear-matrix.ts";
import type { Loop, Voice } from "./graph.ts";

/** How a signal is played. */
export interface PlayHow {
  /** As a feed with this matrix would sound; left out, as it is. */
  readonly through?: EarMatrix | undefined;
  /** Over and over without a seam, until silenced; once unless true. */
  readonly loop?: boolean;
  /** With the balance that `Player.balance` sets; without any unless true. */
  readonly balanced?: boolean;
}

export interface AuditionHow {
  /** From the beginning again, without a gap, until silenced; once unless true. */
  readonly loop?: boolean;
  /** Which is heard first; healthy unless given. */
  readonly first?: Version;
  /** Whoever listens may turn the volume up for a part of it; false unless given. */
  readonly turnedUp?: boolean;
}

/** What a press puts into the graph. */
export interface Programme extends Voice {
  /** In step with it and heard instead of it when asked. */
  readonly instead?: Voice;
  /** What is played over and over; left out, it is played once. */
  readonly loop?: Loop | undefined;
  readonly balanced?: boolean;
  /** Silence at its beginning that is left out, so that a press is heard at once; nought unless given. */
  readonly leadIn?: Seconds;
  /** Once through. */
  readonly lasts: Seconds;
  /** What part of that time something sounds. */
  readonly sounding: number;
  /** The volume may have been turned up for it. */
  readonly turnedUp?: boolean;
}

/** A signal as told, unless it may not be played. */
export function ofSignal(
  name: SignalName,
  seed: number,
  rate: Hertz,
  { through, loop, balanced }: PlayHow,
  kept: Prepared,
): Programme | "refused" {
  const { duration, turnedUp } = signals[name];
  const leadIn = leadInOf(name, seed, rate);
  const sound = kept.get(name, seed, rate);
  const ears = through && tamed(through);
  if (sound === undefined || (through && !ears)) return "refused";
  return {
    sound,
    through: ears,
    loop: loop ? (signals[name].loop?.(rate) ?? whole(sound)) : undefined,
    balanced: balanced ?? false,
    leadIn,
    lasts: duration - leadIn,
    sounding: soundingIn(name, seed) / (duration - leadIn),
    turnedUp: turnedUp ?? false,
  };
}

const whole = ({ left }: Sound): Loop => ({ from: 0, to: left.length });

/** Whole samples of silence before anything sounds. */
function leadInOf(name: SignalName, seed: number, rate: Hertz): Seconds {
  const [first] = signals[name].stretches(seed);
  return first === undefined ? 0 : Math.floor(first.start * rate) / rate;
}

const soundingIn = (name: SignalName, seed: number): Seconds =>
  signals[name].stretches(seed).reduce((sum, { start, end }) => sum + end - start, 0);

/** As many sounds are kept ready as a check and its neighbours need. */
const mostKept = 4;

/** Signals that passed gate one, the latest few: the next press of the same sounds at once. */
export class Prepared {
  readonly #kept = new Map<string, Admitted | undefined>();

  /** The samples of a signal, at the level that all are played at; undefined when it may not be played. */
  get(name: SignalName, seed: number, rate: Hertz): Admitted | undefined {
    const key = JSON.stringify([name, rate, signals[name].stretches(seed)]);
    const sound = this.#kept.has(key) ? this.#kept.get(key) : made(name, seed, rate);
    this.#kept.delete(key);
    this.#kept.set(key, sound);
    const [oldest] = this.#kept.keys();
    if (this.#kept.size > mostKept && oldest !== undefined) this.#kept.delete(oldest);
    return sound;
  }
}

function made(name: SignalName, seed: number, rate: Hertz): Admitted | undefined {
  const sound = admit(evenly(render(name, rate, seed), signals[name].level));
  return "refused" in sound ? undefined : sound;
}

/** A sound brought to the level that all are rendered at, so that the same setting is as loud. */
function evenly(sound: Sound, level: DecibelsFullScale): Sound {
  if (level === renderedLevel || !Number.isFinite(level)) return sound;
  const by = fromDecibels(renderedLevel - level);
  const turned = (channel: Float32Array) => channel.map((sample) => sample * by);
  return { ...sound, left: turned(sound.left), right: turned(sound.right) };
}

/** The healthy version with the faulty one instead; refused when they are not in step or a gain is not finite. */
export function ofAudition(
  { healthy, faulty }: Audition,
  loop: boolean,
  turnedUp = false,
): Programme | "refused" {
  const [first, second] = [voiceOf(healthy), voiceOf(faulty)];
  const inStep =
    first?.sound.rate === second?.sound.rate &&
    first?.sound.left.length === second?.sound.left.length;
  if (first === undefined || second === undefined || !inStep) return "refused";
  const { sound } = first;
  return {
    ...first,
    instead: second,
    loop: loop ? whole(sound) : undefined,
    lasts: sound.left.length / sound.rate,
    sounding: 1,
    turnedUp,
  };
}

function voiceOf({ sound, turned: [left, right] }: Arrival): Voice | undefined {
  const through = tamed({ ll: left, lr: 0, rl: 0, rr: right });
  return through && { sound, through };
}
