import type { Audition, Version } from "#core/hearing/audition.ts";
import type { Prompt } from "#core/prompts/prompt.ts";
import type { SpokenTag } from "#core/prompts/speaking.ts";
import type { SignalName } from "#core/signals/catalogue.ts";
import type { Decibels, Hertz } from "#core/units/units.ts";
import type { AuditionHow, PlayHow } from "./programme.ts";
import type { Route } from "./route.ts";
import type { SpeakHow } from "./speech.ts";
import type { Trouble, World } from "./world.ts";

export type Ending =
  | { readonly ended: "played" }
  | { readonly ended: "silenced" }
  | { readonly ended: "trouble"; readonly why: Trouble };

/** All sound there is. Every member may be handed on by itself. */
export interface Player {
  /** Fetches what a press will need, once the first screen stands. */
  readonly warm: () => void;
  /** Makes the samples of a signal, so that a press of `play` with the same name and seed sounds at once. */
  readonly prepare: (name: SignalName, seed: number) => void;
  /**
   * Plays a signal. To be called in a press. Silences what was playing; plays nothing while muted. What the world does against
   * it is an ending, never a rejection. After a signal for which the volume may have been turned up it is muted until
   * `handOff`, and the level is back at the start.
   */
  readonly play: (name: SignalName, seed: number, how?: PlayHow) => Promise<Ending>;
  /** In which language it speaks from now on; English until it is told. */
  readonly speakIn: (tag: SpokenTag) => void;
  /** Says something to whoever listens, one prompt after the other. Else as `play`. */
  readonly speak: (prompts: readonly Prompt[], how?: SpeakHow) => Promise<Ending>;
  /**
   * Plays a healthy and a faulty version in step, one of them heard; `hear` goes over to the other. Else as `play`. Once,
   * unless it is to loop: then it begins again without a gap until it is silenced. To hear one chain alone, begin with it.
   */
  readonly audition: (audition: Audition, how?: AuditionHow) => Promise<Ending>;
  /** Goes over to a version of what `audition` plays, along a ramp of 20 ms; nothing while no audition plays. */
  readonly hear: (version: Version) => void;
  /** By how much the right is louder than the left in what plays balanced, now and next; neither side is ever raised for it. */
  readonly balance: (right: Decibels) => void;
  /** Sampling rate of the output, at which a sound is best prepared; 48 kHz before there is one. */
  readonly rate: () => Hertz;
  /** To zero within 20 ms, from anything. */
  readonly silence: () => void;
  /** One step up, along a ramp, as far as the cap; nothing before the first sound. */
  readonly louder: () => void;
  /** One step down, along a ramp, as far as the floor; nothing before the first sound. */
  readonly softer: () => void;
  /** Goes to a place, a seat or the whole table: silence, and the level it was left at there, but never a higher one than here. */
  readonly arrive: (place: string) => void;
  /** Silence until `handOff`, and a volume that was turned up stays so: call it before a hand touches plug, lead, switch or amplifier. */
  readonly handOn: () => void;
  /** Sound may be played again, 20 dB lower than before; before the first sound at the start level, and so at every other place. */
  readonly handOff: () => void;
  /** Silence, and from the next press on another way out, at the start level. */
  readonly use: (route: Route) => void;
  readonly world: () => World;
  /** Calls back after every change of the world; returns how to stop that. */
  readonly subscribe: (listener: () => void) => () => void;
  readonly close: () => void;
}
