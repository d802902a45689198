import type { Capture } from "#core/measurement/capture.ts";
import type { Seconds } from "#core/units/units.ts";
import type { Granted } from "./granted.ts";
import type { Device } from "./route.ts";

/** Why nothing is recorded; each has its words in the ui. */
export type RecorderTrouble =
  /** The browser gives this page no input at all. */
  | "cannot record"
  /** Nobody allowed it, or the system does not. */
  | "not allowed"
  | "no input"
  /** Another program holds it, or it does not answer. */
  | "busy"
  /** The input that was chosen is not there any more, or went while it was recorded. */
  | "gone"
  /** It was switched off by a key, the system, or another program. */
  | "muted"
  /** It has other channels than it had a moment ago. */
  | "changed"
  | "suspended"
  | "hidden"
  /** The file that records did not load. */
  | "not loaded"
  /** It was opened, and not one sample came. */
  | "nothing came"
  /** Whatever recorded it stands still. */
  | "lost";

/** What the recording lacks of what came in, as far as a browser lets it be known. */
export interface Gaps {
  /** Frames that did not get here, by the browser's own count; a capture is silent there. */
  readonly missing: number;
  /** Frames of nothing but zeros between others, which no converter gives: the browser had nothing ready. */
  readonly blank: number;
  /** By how much less was recorded than time went by: above a tenth, samples were thrown away unsaid. */
  readonly behind: Seconds;
}

export type Recorded =
  | {
      /** Its time was over, or `stop` was called. */
      readonly recorded: "to the end" | "stopped";
      /** Undefined when it was stopped before the input was open. */
      readonly granted: Granted | undefined;
      /**
       * All that came, where it was to be kept. One channel where both were the same sample for sample: two converters never are,
       * so one input was doubled on the way.
       */
      readonly capture: Capture | undefined;
      readonly gaps: Gaps;
    }
  | { readonly recorded: "trouble"; readonly why: RecorderTrouble };

export interface RecordHow {
  /** Left out: the system's own. */
  readonly input?: Device | undefined;
  /** It ends by itself after this time; kept, after 30 s at the latest. */
  readonly longest: Seconds;
  /** Keep it all in one capture; only handed on unless true. */
  readonly keep?: boolean;
  /** The input is open and its first samples are there. */
  readonly onOpen?: ((granted: Granted) => void) | undefined;
  /** Some more of it: one array a channel, and when its first frame came since the beginning. */
  readonly onBlock?: (channels: readonly Float32Array[], at: Seconds) => void;
}

/** Why inputs cannot be chosen from. */
export type NoInputs = "cannot record" | "not allowed" | "no input";

export interface RecorderWorld {
  /** From the press on; whatever light the machine has is on from somewhere in "opening" until "nothing". */
  readonly doing: "nothing" | "opening" | "recording";
  /** Until the next press. */
  readonly trouble: RecorderTrouble | undefined;
  /** What the browser gave, while it records and until the next press. */
  readonly granted: Granted | undefined;
}

/** All that listens. Nothing of it is kept here nor led to any output. Every member may be handed on by itself. */
export interface Recorder {
  /** Whether this browser can record at all. */
  readonly canRecord: () => boolean;
  /** The inputs whose names may already be seen, without asking. */
  readonly known: () => Promise<readonly Device[]>;
  /** Asks for the names, on a step of its own before anything is recorded; the input is closed at once. To be called in a press. */
  readonly named: () => Promise<readonly Device[] | NoInputs>;
  /**
   * Opens an input, records, and closes it again, however it ends; what was recorded before is stopped. To be called in a press.
   * What the world does against it is an ending, never a rejection.
   */
  readonly record: (how: RecordHow) => Promise<Recorded>;
  /** Ends the recording; it is whole as far as it went. */
  readonly stop: () => void;
  readonly world: () => RecorderWorld;
  /** Calls back after every change of the world; returns how to stop that. */
  readonly subscribe: (listener: () => void) => () => void;
  readonly close: () => void;
}
