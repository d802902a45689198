import { counted } from "#core/report/phrases.ts";
import type { Ear, LevelChange } from "#core/session/compared.ts";
import type { Lost } from "#core/session/mended.ts";
import type { Refusal } from "#core/session/read-case.ts";

const ears: Readonly<Record<Ear, string>> = { left: "left", right: "right" };

/** Why a file is refused, and what to do. */
const refused: Readonly<Record<Refusal | "too large" | "unreadable" | "not kept", string>> = {
  empty: "The file is empty.",
  "not JSON": "This is no session: the file is not written in JSON.",
  "cut off": "The file is cut off before all of its rig stands in it: nothing of it can be used.",
  "too deep": "This is no session: it has far more brackets within brackets than one has.",
  "no session": "This is no session: nothing in the file says that it is one.",
  "another format": "This is a file of another kind, not a session.",
  "a newer version":
    "A newer copy of this program wrote this file. Reload the page, then bring it in.",
  "no log": "The session in this file has no entries.",
  "no rig": "No rig that can be understood stands in this file.",
  "too large": "The file is larger than any session: more than 20 MB.",
  unreadable: "The browser could not read the file. Choose it again.",
  "not kept": "The file is a session, but it could not be kept here. Leave the file where it is.",
};

const lost: Readonly<Record<Lost["why"], string>> = {
  "not understood": "not understood",
  "an id that is taken": "its number is another's",
  "takes back what is not there": "takes back what is not there",
};

const change = (one: LevelChange): string => {
  const size = `${Math.abs(one.by)} dB`;
  const word = one.by < 0 ? "lost" : "gained";
  switch (one.change) {
    case "ear":
      return `${word} ${size} on the ${ears[one.ear]}`;
    case "balance":
      return `${word} ${size} on the ${ears[one.ear]}, against the other side`;
    case "played":
      return `was played ${size} ${one.by < 0 ? "softer" : "louder"}`;
  }
};

/** Every session that is kept, and two beside each other. */
export const sessions = {
  kept: (count: number) =>
    count === 0 ? "Nothing is kept yet" : counted(count, "session", "sessions"),
  hint: "Press one to go on with it.",
  none: "What is checked from now on is kept in this browser, on this device alone.",
  loading: "Looking…",
  notRead: "The sessions could not be read",
  notReadHint: "What is kept stays where it is.",
  readAgain: "Look again",
  unread: "A session that cannot be understood",
  unreadHint: (count: number) =>
    `${counted(count, "entry", "entries")}, and no rig among them. Saved as a file nothing of it is lost.`,
  bench: "A rig without gear",
  noted: (healthy: number, wrong: number, unsure: number, of: number) =>
    [
      healthy > 0 ? `${healthy} of ${of} healthy` : "",
      wrong > 0 ? `${wrong} wrong` : "",
      unsure > 0 ? `${unsure} not sure` : "",
      healthy + wrong + unsure === 0 ? "nothing settled yet" : "",
    ]
      .filter(Boolean)
      .join(", "),
  notHeard: "nothing heard yet",
  here: "in hand",
  by: (who: string) => `by ${who}`,
  more: (name: string) => `What else to do with ${name}`,
  moreShort: "more",
  rename: "Rename",
  name: "Name of the session",
  tomorrow: "Begin anew with this rig",
  compare: "Compare with another",
  save: "Save as a file",
  saveBench: "Save as a file with the number of what is hidden",
  remove: "Delete",
  removed: (name: string) => `${name} is deleted. It can be brought back for a day.`,
  restore: "Bring it back",
  bringIn: "Bring one in from a file",
  dropHere: "or drop it here",
  refused,
  broughtIn: (name: string) => `${name} was brought in.`,
  hereAlready: (name: string) => `${name} is here already.`,
  cutOff: "The end of the file is missing; what stands before it is here.",
  leftOut: (count: number) => `${counted(count, "entry was", "entries were")} left out:`,
  lost: ({ place, entry, why }: Lost) =>
    `number ${place}${entry === undefined ? "" : ` (${entry})`}: ${lost[why]}`,
  withWhich: (name: string) => `Compare ${name} with which?`,
  since: (name: string, date: string) => `Since ${name}, ${date}`,
  noneCompared: "Nothing can be compared yet",
  changed: (count: number, compared: number, of: number) => {
    const changed =
      count === 0 ? "Nothing has changed" : `${counted(count, "position", "positions")} changed`;
    return compared === of ? changed : `${changed}; ${compared} of ${of} could be compared`;
  },
  change,
  another: "This is another rig",
  anotherMore:
    "No name on a tape agrees, and nothing else shows that it is the same rig: nothing can be compared.",
  asBefore: "as before",
  wanted: (was: string, is: string) => `wanted then: ${was}; wanted now: ${is}`,
  was: (was: string, is: string) => `was ${was}, now: ${is}`,
  stood: {
    "not heard": "not heard",
    begun: "not finished",
    healthy: "healthy",
    wrong: "wrong",
    unsure: "unsure",
    absent: "nobody there",
  },
  gaps: {
    "only then": "is not in this rig any more",
    "only now": "was not in that rig",
    "not heard then": "was not heard then",
    "not heard now": "is not heard yet",
    "no levels in both": "levels cannot be compared: they were not taken both times",
  },
  gone: (parts: string) => `No longer there: ${parts}.`,
  come: (parts: string) => `New: ${parts}.`,
};
