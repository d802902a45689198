import type { Capture } from "#core/measurement/capture.ts";
import type { InstrumentName } from "#core/signals/instruments.ts";
import type { DecibelsFullScale, Seconds } from "#core/units/units.ts";
import type { Granted } from "./granted.ts";
import type { OutputTrouble } from "./output.ts";
import type { Gaps, RecorderTrouble } from "./recorder.ts";
import type { Device, Route } from "./route.ts";

/** Why nothing is measured: the way out, the way in, or gate one. */
export type MeasurerTrouble = OutputTrouble | RecorderTrouble | "refused";

/** What comes back, over the latest moments. */
export interface Returned {
  /** Root mean square of each channel. */
  readonly levels: readonly DecibelsFullScale[];
  /** The greatest sample of any. */
  readonly peak: DecibelsFullScale;
}

/** How far a measurement is; both from the first recorded sample on. */
interface Progress {
  readonly done: Seconds;
  readonly total: Seconds;
}

export interface MeasureHow {
  /** What is recorded; left out, the system's own input. */
  readonly input?: Device | undefined;
  readonly onProgress?: (progress: Progress) => void;
}

export interface WatchHow extends Pick<MeasureHow, "input"> {
  /** Some more of what comes back: one array a channel, and when its first frame came since the beginning. */
  readonly onBlock: (channels: readonly Float32Array[], at: Seconds) => void;
  /** The input is open. */
  readonly onOpen?: (granted: Granted) => void;
}

/** What one playing of the multitone gave. */
interface Taken {
  readonly capture: Capture;
  readonly granted: Granted;
  readonly gaps: Gaps;
  /** As it left the program. */
  readonly level: DecibelsFullScale;
}

/** How a press ends that did not get to its end. */
export type Broken =
  | { readonly ended: "stopped" }
  | { readonly ended: "trouble"; readonly why: MeasurerTrouble };

export type Measured = ({ readonly ended: "measured" } & Taken) | Broken;

/** What the level was found to be, which it is from then on. */
export type Found =
  | {
      readonly ended: "found";
      /** "clipped": even the softest is too much for the input. */
      readonly found: "loud enough" | "as loud as it may be" | "clipped";
      readonly level: DecibelsFullScale;
    }
  | Broken;

export interface MeasurerWorld {
  readonly doing: "nothing" | "measuring" | "finding the level" | "watching";
  /** Until the next press. */
  readonly trouble: MeasurerTrouble | undefined;
  /** Level at which the signals leave the program, or are on the way to. */
  readonly level: DecibelsFullScale;
  /** While something is recorded. */
  readonly returned: Returned | undefined;
  readonly route: Route;
}

/**
 * Plays what is for instruments alone into the thing under test and records what comes back: its own press, never a way to ears, and
 * yet through both gates, from the start level up in steps, as far as the cap. Whoever presses it silences the player first, and
 * has nobody listen. Every member may be handed on by itself.
 */
export interface Measurer {
  /** Fetches what a press will need. */
  readonly warm: () => void;
  /** Plays the multitone once, and records from a moment before until a second after. To be called in a press. Never rejects. */
  readonly measure: (how?: MeasureHow) => Promise<Measured>;
  /** Plays the multitone and raises it in slow steps until what comes back stands 40 dB above the noise; in a press, never rejects. */
  readonly findLevel: (how?: MeasureHow) => Promise<Found>;
  /** Plays a signal over and over and hands on what comes back, until `silence`. To be called in a press. Never rejects. */
  readonly watch: (name: InstrumentName, how: WatchHow) => Promise<Broken>;
  /** To zero within 20 ms, and the input closed. */
  readonly silence: () => void;
  /** One step up, as far as the cap: at once along a ramp, but while it measures only for the next time. */
  readonly louder: () => void;
  /** One step down, as far as the floor; else as `louder`. */
  readonly softer: () => void;
  /** Silence, and from the next press on another way out, at the start level. */
  readonly use: (route: Route) => void;
  readonly world: () => MeasurerWorld;
  /** Calls back after every change of the world; returns how to stop that. */
  readonly subscribe: (listener: () => void) => () => void;
  readonly close: () => void;
}
