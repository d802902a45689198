import { earCheck } from "#core/checks/catalogue.ts";
import type { Question } from "#core/checks/check.ts";
import { complaint } from "#core/checks/complaint.ts";
import type { Asked, MeasuredGains } from "#core/checks/finding.ts";
import type { Era } from "./era.ts";
import type { Glimpsed } from "./glimpses.ts";

/** Everything answered to one question with nothing on the way touched: the chance of it, for each answer that may have been meant. */
export interface Heard {
  readonly question: Question;
  readonly position: string;
  /** The state of the way to the position that it speaks of. */
  readonly channel: number;
  readonly weights: Float64Array;
  /** All answers given. */
  readonly said: ReadonlySet<string>;
  /** How often it was asked. */
  readonly times: number;
  /** Each time it was asked by itself. Questions about one playing of a check bear one number. */
  readonly playings: readonly Playing[];
}

/** What was answered to a question about one playing. */
interface Playing {
  readonly number: number;
  readonly weights: Float64Array;
}

/** An ear matrix that was measured. */
export interface Measured {
  readonly position: string;
  readonly channel: number;
  readonly gains: MeasuredGains;
  readonly error: number;
  /** All gains may be too large or too small by one factor. */
  readonly free: boolean;
}

/** What is known of a rig: a log's findings and moves, in the form that likelihoods are made of. */
export interface Evidence {
  readonly era: Era;
  readonly heard: readonly Heard[];
  readonly measured: readonly Measured[];
  readonly glimpsed: readonly Glimpsed[];
  /** Looks at places that nobody touched since. */
  readonly seen: ReadonlySet<string>;
  /** Plugs that were twisted since they were touched: part and plug. */
  readonly twisted: ReadonlySet<string>;
  /** Moves that cannot be made here, written as JSON. */
  readonly cannot: ReadonlySet<string>;
  /** Positions where nobody is, who could be asked. */
  readonly absent: ReadonlySet<string>;
  /** The state of the way to a position now. */
  readonly nowAt: (position: string) => number;
}

/** What is asked of a person at a position. */
export type AtPosition = Extract<Asked, { readonly position: string }>;

/** The questions of a check by ear, or the one that a complaint answers. */
export const questionsOf = ({ check }: AtPosition): readonly Question[] =>
  check === "complaint" ? [complaint] : earCheck(check).questions;
