import type { Version } from "#core/hearing/audition.ts";
import { type Exposure, unheard } from "#core/hearing/exposure.ts";
import { startLevel } from "#core/signals/caps.ts";
import type { Decibels, DecibelsFullScale, Seconds } from "#core/units/units.ts";
import type { OutputTrouble } from "./output.ts";
import { type Route, systemRoute } from "./route.ts";

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
  /** Level of an ident as it leaves the program at the place in hand, or is on its way to. */
  readonly level: DecibelsFullScale;
  /** By how much the right is louder than the left in what plays with a balance. */
  readonly balance: Decibels;
  /** A hand is on a plug, lead, switch or amplifier, or the volume was turned up. */
  readonly muted: boolean;
  /** Muted because whoever listened may have turned the volume up, as for hiss. */
  readonly turnedUp: boolean;
  /** The level is lower than it was before a hand touched something. */
  readonly lowered: boolean;
  /** What was played at the place in hand since the page was opened. */
  readonly exposure: Exposure;
  /** From the program to the ear, where the browser says. */
  readonly delay: Seconds | undefined;
  /** Where the sound goes. */
  readonly route: Route;
  /** How many channels that output has, once it was opened. */
  readonly channels: number | undefined;
}

/** Before the first sound. */
export const atFirst: World = {
  trouble: undefined,
  playing: false,
  heard: undefined,
  silences: 0,
  level: startLevel,
  balance: 0,
  muted: false,
  turnedUp: false,
  lowered: false,
  exposure: unheard,
  delay: undefined,
  route: systemRoute,
  channels: undefined,
};
