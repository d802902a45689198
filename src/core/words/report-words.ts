import type { Sureness } from "./sureness.ts";

/** Chances and times as people say them. */
export interface PhraseWords {
  /** So many in a hundred, from 1 to 99. */
  readonly inHundred: (count: number) => string;
  readonly underOne: string;
  readonly sure: Readonly<Record<Sureness, string>>;
  readonly underAMinute: string;
  /** About so many minutes, a half as '½'. */
  readonly minutes: (count: string) => string;
}

/** How names that people gave stand in a sentence. */
export interface NameWords {
  /** By itself, as beside a drawing. Names that the program gave are said in the language, all others as they were given. */
  readonly alone: (id: string) => string;
  /** A socket of a part by itself, as in a list. */
  readonly socket: (part: string, socket: string) => string;
  /** In a sentence: a part, or a socket of it. */
  readonly within: (place: string) => string;
}

/** The answers with no place on a head. */
export interface AnswerWords {
  readonly said: Readonly<
    Record<
      | "cup marked L"
      | "cup marked R"
      | "both cups"
      | "neither cup"
      | "something"
      | "nothing changes"
      | "it comes and goes"
      | "never in the middle",
      string
    >
  >;
  /** In the middle with the right louder by so many decibels; the left where they are below nought. */
  readonly middleAt: (right: number) => string;
  readonly cannotTell: string;
  /** Which burst of the two was asked about. */
  readonly bursts: Readonly<Record<"in phase" | "opposite", string>>;
}

/** What is said of a diagnosis: sentences of what was asked, answered and done. All without a full stop unless told. */
export interface ReportWords {
  /** What is asked, and at whose seat. */
  readonly at: (seat: string, check: string) => string;
  readonly ofQuestion: (asked: string, question: string) => string;
  readonly answered: (asked: string, given: string) => string;
  readonly or: (some: readonly string[]) => string;
  readonly inTurn: (some: readonly string[]) => string;
  readonly otherTimes: (told: string, answers: string) => string;
  /** As a suspect would have it, and as it would not; with the full stop. */
  readonly asExpected: (told: string) => string;
  readonly otherwise: (told: string, predicted: string, odds: string) => string;
  /** What would change a verdict: a check, and what would be answered. */
  readonly turning: (asked: string, answers: string) => string;
  /** Why a verdict is not sure; with the full stop. */
  readonly unfit: string;
  readonly repairSooner: string;
  readonly nothingWorth: string;
  /** An instruction that cannot be followed here, and a seat with nobody at it. */
  readonly notPossible: (text: string) => string;
  readonly nobodyAt: (seat: string) => string;
  readonly turnBack: string;
  readonly otherListener: (seat: string) => string;
  /** How to mend what nobody can get at here. */
  readonly notHere: (mend: string) => string;
  /** Something that is not on the list, with the stretch that it is in. */
  readonly inShared: (text: string) => string;
  readonly inOwn: (text: string, seat: string) => string;
  /** What an eye sees, with the box that the plug is in, and which of its plugs it is. */
  readonly seenAt: (seen: string, into: string, plug: string | undefined) => string;
  readonly inSocket: (socket: string) => string;
}
