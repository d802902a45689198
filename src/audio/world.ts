import type { Version } from "#core/hearing/audition.ts";
import type { DecibelsFullScale, Seconds } from "#core/units/units.ts";
import type { OutputTrouble } from "./output.ts";

/** Why nothing sounds; each has its words in the ui. */
export type Trouble = OutputTrouble | "refused";

/** The world of sound as it is now; another value when it changed. */
export interface World {
  /** Until the next press of play. */
  readonly trouble: Trouble | undefined;
  /** From the press to the end of the sound. */
  readonly playing: boolean;
  /** Which version of an audition is heard, or is being gone over to; undefined while none plays. */
  readonly heard: Version | undefined;
  /** How often silence was asked for; whoever makes a sound ready lets go of it when this grows. */
  readonly silences: number;
  /** Level of an ident as it leaves the program, or is on its way to. */
  readonly level: DecibelsFullScale;
  /** A hand is on a plug, lead, switch or amplifier. */
  readonly muted: boolean;
  /** The level is lower than it was before a hand touched something. */
  readonly lowered: boolean;
  /** From the program to the ear, where the browser says. */
  readonly delay: Seconds | undefined;
}
