import type { Decibels, Seconds } from "#core/units/units.ts";

/**
 * Where the lead's sleeve goes at its far end. 'joined': inputs whose ground is the output's, by which a lost sleeve is invisible;
 * 'load box': two resistors whose star point is on nothing but the sleeve (handbook, section 7).
 */
const flexReturns = ["joined", "load box"] as const;
export type FlexReturn = (typeof flexReturns)[number];

/** Why there is nothing to watch. */
const flexRefusals = ["no signal", "clipped", "too noisy to see 2 ms", "sides mixed"] as const;
export type FlexRefusal = (typeof flexRefusals)[number];

/**
 * What cannot be seen. 'sleeve': not tested. 'left only', 'right only': of the other side's own conductor nothing is seen. 'one input': both sides come in by
 * one channel, where crosstalk is not told from what belongs there: a lost side is seen, a sleeve or a short of both is not.
 */
const flexLimits = ["sleeve", "left only", "right only", "one input"] as const;
export type FlexLimit = (typeof flexLimits)[number];

/**
 * What the sides tell of the conductors, as the plug at the output names them: the left programme is on the tip there. 'tip': the left side is lost;
 * 'ring': the right; 'sleeve': each comes in antiphase on the other; 'tip to ring': each comes in phase on the other; 'mixed': the other side comes too, and with one
 * input it cannot be said in which phase.
 */
const flexFaults = ["tip", "ring", "tip and ring", "sleeve", "tip to ring", "mixed"] as const;
export type FlexFault = (typeof flexFaults)[number];

/** A side is as silent when its conductor is open as when it touches the sleeve; where crosstalk tells, it is said which. */
const flexCauses = ["open", "short", "open or short"] as const;
export type FlexCause = (typeof flexCauses)[number];

/** Something that happened to the lead while it was bent. */
export interface FlexEvent {
  /** Counts up from one. */
  readonly id: number;
  /** Since the first sample. */
  readonly at: Seconds;
  /** From the first break to the end of the last one; of one that goes on, so far. */
  readonly duration: Seconds;
  readonly kind: "dropout" | "short" | "crackle";
  readonly fault: FlexFault;
  readonly cause: FlexCause;
  /**
   * By how much falls what the fault takes away, at its deepest: of a lost side its level, of a sleeve the middle, of a short of both sides their difference.
   */
  readonly depth: Decibels;
  /** The noise ends there: it may be deeper. */
  readonly atLeast: boolean;
  /** Makes and breaks closer together than 50 ms are one event. */
  readonly breaks: number;
  /** All breaks together. */
  readonly broken: Seconds;
  /** It has not ended. */
  readonly going: boolean;
}

/** A level that changed too slowly, or too little, for an event, and stayed. */
export interface FlexChange {
  readonly at: Seconds;
  /** 'crosstalk': what comes from one side on the other, against a whole side. */
  readonly of: "left" | "right" | "crosstalk";
  /** Of a side: against how it began. Of crosstalk: against the wanted side. */
  readonly level: Decibels;
}

/** What a watch can do now. */
export type FlexStatus =
  | { readonly status: "learning"; readonly refused?: FlexRefusal }
  | { readonly status: "watching"; readonly limits: readonly FlexLimit[] }
  | {
      readonly status: "blind";
      readonly refused: FlexRefusal;
      readonly limits: readonly FlexLimit[];
    };
