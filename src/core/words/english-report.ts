import { heards } from "#core/listening/heard.ts";
import { withThe } from "./english-names.ts";
import type { Language } from "./language.ts";
import type { AnswerWords, NameWords, PhraseWords, ReportWords } from "./report-words.ts";

/** Chances and times. */
export const phrases: PhraseWords = {
  inHundred: (count) => `${count} in 100`,
  underOne: "less than 1 in 100",
  sure: {
    "almost certain": "almost certain",
    "very likely": "very likely",
    likely: "likely",
    "more likely than not": "more likely than not",
    possible: "possible",
  },
  underAMinute: "less than a minute",
  minutes: (count) => `about ${count} min`,
};

/** Names are in English as they stand in a rig. */
export const names: NameWords = {
  alone: (id) => id,
  socket: (part, socket) => `${part}, ${socket}`,
  within: (place) =>
    /^headphones|^in-ears/.test(place) ? place : place.replace(/^[^,]+/, withThe),
};

/** Where something was heard. */
export const heard: Language["heard"] = {
  ...(Object.fromEntries(heards.map((each) => [each, each])) as Language["heard"]),
  "all round": "all round, no place",
  "faint, all round": "faint, all round",
  nothing: "nothing at all",
};

const middleAt = (right: number): string => {
  if (right === 0) return "in the middle as it is";
  return right > 0
    ? `in the middle with the right up ${right} dB`
    : `in the middle with the left up ${-right} dB`;
};

/** Answers with no place on a head. */
export const answers: AnswerWords = {
  said: {
    "cup marked L": "cup marked L",
    "cup marked R": "cup marked R",
    "both cups": "both cups",
    "neither cup": "neither cup",
    something: "something",
    "nothing changes": "nothing changes",
    "it comes and goes": "it comes and goes",
    "never in the middle": "never in the middle",
  },
  middleAt,
  cannotTell: "can't tell",
  bursts: { "in phase": "in phase", opposite: "opposite" },
};

const lower = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

/** What is said of a diagnosis. */
export const report: ReportWords = {
  at: (seat, check) => `${seat}, ${check}`,
  ofQuestion: (asked, question) => `${asked}, ${question}`,
  answered: (asked, given) => `${asked}: ${given}`,
  or: (some) => some.join(", or "),
  inTurn: (some) => some.join(", then "),
  otherTimes: (told, given) => `${told}; at other times ${given}`,
  asExpected: (told) => `${told}; so it would be.`,
  otherwise: (told, predicted, odds) =>
    `${told}; it would be: ${predicted} (${odds} for what was said).`,
  turning: (asked, given) => `${asked}, if the answer is: ${given}`,
  unfit: "Not all that was answered goes together.",
  repairSooner: "No check here is worth its seconds any more: the repair is tried sooner.",
  nothingWorth: "Nothing on offer is worth its seconds.",
  notPossible: (text) => `not possible here: ${lower(text)}`,
  nobodyAt: (seat) => `nobody at ${seat}`,
  turnBack: "Turn them back: each cup on its own ear",
  otherListener: (seat) => `Let somebody else listen at ${seat}`,
  notHere: (mend) => `${mend}; nothing of that is possible here: somebody else has to see to it`,
  inShared: (text) => `${text}, in what all share`,
  inOwn: (text, seat) => `${text}, in what ${seat} alone has`,
  seenAt: (seen, into, plug) =>
    `${seen}, ${plug === undefined ? "" : `the ${plug} plug `}at ${withThe(into)}`,
  inSocket: (socket) => `in the socket marked ${socket}`,
};
