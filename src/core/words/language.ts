import type { EarCheckName } from "#core/checks/check.ts";
import type { Heard } from "#core/listening/heard.ts";
import type { FaultName } from "#core/parts/fault-names.ts";
import type { Effect } from "#core/rig/effect.ts";
import type { PatchingWords } from "./patching-words.ts";

/** What is said of a fault, given the words for where it is. */
export interface FaultWords {
  /** A sentence without its full stop: 'the tip is open in the feed lead'. */
  readonly is: (where: string) => string;
  /** What a look shows, in a few words. */
  readonly seen: string;
  /** What to do about it. Said after 'volume down first'. */
  readonly mend: (where: string) => string;
}

/** What is said of a check by ear. */
interface CheckWords {
  readonly name: string;
  /** The question, once the sound is over; for the pair, of the first and of the second burst. */
  readonly questions: readonly string[];
  /** What to listen for, before it plays. */
  readonly before: string;
}

/** Everything the program says about the rig and its faults, in one language. */
export interface Language {
  readonly faults: Readonly<Record<FaultName, FaultWords>>;
  readonly checks: Readonly<Record<EarCheckName, CheckWords>>;
  readonly heard: Readonly<Record<Heard, string>>;
  readonly effects: Readonly<Record<Effect, string>>;
  readonly asItShouldBe: string;
  readonly volumeFirst: string;
  /** Said after a fault that comes and goes. */
  readonly nowAndThen: string;
  /** What no check here can tell, whatever was answered. */
  readonly neverTested: readonly string[];
  readonly where: (spot: Spot) => string;
  /** What is said before anything is plugged in. */
  readonly patching: PatchingWords;
}

/** Where a fault sits: its part, and its plug or socket where that matters. */
export interface Spot {
  readonly part: string;
  readonly at: string;
  /** The box its plug belongs in. */
  readonly into?: string;
  /** Which plug, where several of the part's go into that box. */
  readonly plug?: string;
  /** The socket it stands in by mistake. */
  readonly socket?: string;
}
