import type { Behaviour } from "#core/rig/behaviour.ts";
import type { SignalName } from "#core/signals/catalogue.ts";
import type { Seconds } from "#core/units/units.ts";

export const earChecks = ["left", "right", "pair", "cup", "silence", "balance"] as const;
export type EarCheckName = (typeof earChecks)[number];

/** One thing asked, with its closed list of answers. */
export interface Question {
  readonly name: string;
  readonly answers: readonly string[];
  /**
   * One probability for each answer, before slips, from what the way to the ears does; `healthy` is what it does with nothing
   * wrong.
   */
  readonly predict: (behaviour: Behaviour, healthy: Behaviour) => Float64Array;
  /** What is said of a way that comes and goes, whatever it does then; left out where each hearing is judged by itself. */
  readonly unsteady?: Float64Array;
}

/** A sound and what is asked about it. */
export interface EarCheck {
  readonly name: EarCheckName;
  readonly signal: SignalName;
  readonly questions: readonly Question[];
  /** To play it and take the answer. Handbook, section 8. */
  readonly seconds: Seconds;
  /** A position is not called healthy without it. */
  readonly required: boolean;
}
