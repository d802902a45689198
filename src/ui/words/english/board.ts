import { counted } from "#core/report/phrases.ts";
import type { State } from "#core/session/derive.ts";
import type { Because } from "#core/session/where.ts";

/** How a position stands, in a line. */
const states: Readonly<Record<State, string>> = {
  "not heard": "not heard yet",
  begun: "begun",
  healthy: "healthy",
  wrong: "something is wrong",
  unsure: "not sure",
  absent: "nobody here",
};

/** Why somebody goes there next. */
const because: Readonly<Record<Because, string>> = {
  "what all share is mended first": "what all share is mended first",
  "it was begun": "it was begun",
  "one seat tells of what all share": "one seat tells of what all share",
  "all at once is quicker than walking": "all at once is quicker than walking",
  "it is the next": "it is the next",
  "it is mended soonest": "it is mended soonest",
};

/** The board: every position, and where to go next. */
export const board = {
  noGear: "A rig without gear: something in it is wrong",
  toCheck: (positions: number) => `${counted(positions, "position", "positions")} to check`,
  nobody: "Nobody is there",
  oneHealthy: "It is healthy",
  allHealthy: (positions: number) => `All ${positions} are healthy`,
  someHealthy: (healthy: number, of: number) => `${healthy} of ${of} healthy`,
  needYou: (positions: number) => `${positions} ${positions === 1 ? "needs" : "need"} you`,
  trunkSound: (sure: string) => `nothing wrong in what they share: ${sure}`,
  theRig: "the rig",
  leftOut: (entries: number) =>
    `${counted(entries, "answer or move speaks", "answers or moves speak")} of what is no longer drawn and no longer counts.`,
  states,
  unsureYet: (words: string) => `not sure yet: ${words}`,
  because,
  anotherRig: "another rig",
  allAtOnce: "All at once, hands up",
  listenAt: (seat: string) => `Listen at ${seat}`,
  goOnAt: (seat: string) => `Go on at ${seat}`,
  whatIsWrongAt: (seat: string) => `What is wrong at ${seat}`,
  beforeTheyPart: "this is before the positions part",
};
