import type { Move } from "#core/rig/moves.ts";
import type { Ohms } from "#core/units/units.ts";
import type { EarCheckName } from "./check.ts";
import type { Noise, Trial } from "./noise.ts";

/**
 * What was asked of a person: a check by ear at a position, what somebody there complains of, a look at a place, or a plug twisted while
 * something plays.
 */
export type Asked =
  | { readonly check: EarCheckName; readonly position: string }
  | { readonly check: "complaint"; readonly position: string }
  | { readonly check: "look"; readonly place: string }
  | { readonly check: "twist"; readonly part: string; readonly plug: string };

/** For each question the answers it may have been; one if it was clear, all of them for 'can't tell'. */
export type Results = readonly (readonly string[])[];

/** What a person found. */
export interface Answered {
  readonly asked: Asked;
  readonly results: Results;
  /** 'Sometimes': what was heard at other times, with nothing touched in between. */
  readonly otherTimes?: Results;
}

/** What a meter read between two contacts of a part that is unplugged at all of its ends, each named `plug.contact`. */
export interface Reading {
  readonly asked: {
    readonly check: "continuity";
    readonly part: string;
    readonly from: string;
    readonly to: string;
  };
  /** Left out where the meter showed an open circuit. */
  readonly ohms?: Ohms;
  /** What the meter did while the part was bent along its length and at its plugs; left out where nobody bent it. */
  readonly bent?: Bent;
}

/** What a meter does while a lead is bent. */
export const bends = ["steady", "changes"] as const;
export type Bent = (typeof bends)[number];

/** Left ear from left, left ear from right, right ear from left, right ear from right: each a real and an imaginary part. */
export type MeasuredGains = readonly [
  ll: readonly [re: number, im: number],
  lr: readonly [re: number, im: number],
  rl: readonly [re: number, im: number],
  rr: readonly [re: number, im: number],
];

/** The ear matrix of a position as it was measured at 1 kHz, against the largest gain of a healthy chain. */
export interface Measured {
  readonly asked: { readonly check: "matrix"; readonly position: string };
  readonly gains: MeasuredGains;
  /** One standard deviation of each real and imaginary part. */
  readonly error: number;
  /** No healthy chain was measured first: all gains may be too large or too small by one factor. */
  readonly level?: "as it comes";
}

/** What became of a noise at a position while something was tried. It says where a noise comes in, and nothing of left and right. */
export interface Noticed {
  readonly asked: {
    readonly check: "noise";
    readonly position: string;
    readonly noise: Noise;
    readonly trial: Trial;
  };
  /** One question. No answer at all: it cannot be tried here. */
  readonly results: Results;
}

/** What was found; it speaks of the rig as the moves before it left it. */
export type Finding = Answered | Reading | Measured | Noticed;

/** Whether a person answered a check, rather than an instrument. */
export const isAnswered = (finding: Finding): finding is Answered =>
  "results" in finding && !isNoticed(finding);

/** Whether it is of a noise. */
export const isNoticed = (finding: Finding): finding is Noticed => finding.asked.check === "noise";

/** Whether a meter read it between two contacts. */
export const isReading = (finding: Finding): finding is Reading =>
  finding.asked.check === "continuity";

/** What happened, in order. */
export type Happening =
  | { readonly kind: "finding"; readonly finding: Finding }
  | { readonly kind: "move"; readonly move: Move }
  /** A move that was asked for and cannot be made here: there is no other set, no free output. */
  | { readonly kind: "cannot"; readonly move: Move };
