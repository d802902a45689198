import { counted } from "#core/report/phrases.ts";
import type { Found } from "#core/report/sheet-found.ts";
import type { SeatState } from "#core/report/sheet-seats.ts";

const states: Readonly<Record<SeatState, string>> = {
  "not heard": "not heard",
  begun: "begun, not finished",
  healthy: "healthy",
  wrong: "wrong",
  unsure: "not sure",
  absent: "nobody there",
  "as ordered": "as ordered",
};

const ends: Readonly<Record<Found["end"], string>> = {
  mended: "mended",
  "still there": "still there",
  "not checked again": "something was done, and not checked again",
  "no longer suspected": "later answers spoke against it",
};

/** The sheet of a session, on paper and as a file. */
export const sheet = {
  title: "The sheet to hand over",
  open: "the sheet",
  making: "The sheet is being written.",
  lead: "What was heard, found and mended, on paper: one page for eight positions.",
  print: "Print or save as PDF",
  csv: "Save as CSV",
  name: "What this session is called",
  who: "Who did it",
  whoHere: "name of who did it",
  whoLabel: "by",
  noGear: "a rig without gear: the faults in it were simulated",
  rig: (name: string) => `rig: ${name}`,
  healthy: (healthy: number, of: number) =>
    `${healthy} of ${counted(of, "position", "positions")} healthy`,
  states,
  ends,
  positions: "Each position",
  position: "Position",
  worn: "Worn",
  result: "Result",
  level: "Test signal",
  alike: (others: number) =>
    `or ${counted(others, "other", "others")} that no check here tells from it`,
  unsure: (fault: string) => `the likeliest: ${fault}`,
  centred: "in the middle as it is",
  rightUp: (level: string) => `in the middle with the right ${level} up`,
  leftUp: (level: string) => `in the middle with the left ${level} up`,
  neverCentred: "never in the middle",
  wanted: (feed: string) => `wanted here: ${feed}`,
  measured: (left: string, right: string) => `measured L ${left}, R ${right}`,
  found: "Faults found",
  foundNone: "None.",
  told: "told by what cured it",
  by: (moves: string) => `after: ${moves}`,
  notTested: "Not tested",
  unheard: (parts: string) =>
    `Faults that nothing here tells from a sound chain, so many in each part: ${parts}`,
  unheardInEach: (first: string, last: string, faults: number) =>
    `${first} to ${last} (${faults} each)`,
  unheardIn: (part: string, faults: number) => `${part} (${faults})`,
  notHeard: (seats: string) => `Not heard: ${seats}`,
  unfinished: (seats: string) => `Begun and not finished: ${seats}`,
  file: "session",
  columns: {
    kind: "what",
    name: "name",
    worn: "worn",
    result: "result",
    detail: "detail",
    sure: "sure, in 100",
    level: "test signal, dBFS",
    balance: "right up to be in the middle, dB",
    left: "left ear, dB",
    right: "right ear, dB",
    time: "time",
    mended: "mended by",
  },
  kinds: { session: "session", position: "position", fault: "fault", notTested: "not tested" },
};
