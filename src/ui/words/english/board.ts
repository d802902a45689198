import { counted } from "#core/report/phrases.ts";

/** The board: every position, and where to go next. */
export const board = {
  noGear: "A rig without gear: something in it is wrong",
  toCheck: (positions: number) => `${counted(positions, "position", "positions")} to check`,
  oneHealthy: "It is healthy",
  allHealthy: (positions: number) => `All ${positions} are healthy`,
  someHealthy: (healthy: number, of: number) => `${healthy} of ${of} healthy`,
  needYou: (positions: number) => `${positions} ${positions === 1 ? "needs" : "need"} you`,
  trunkSound: (sure: string) => `nothing wrong in what they share: ${sure}`,
  theRig: "the rig",
  leftOut: (entries: number) =>
    `${counted(entries, "answer or move speaks", "answers or moves speak")} of what is no longer drawn and no longer counts.`,
};
