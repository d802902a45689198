import { plugWords, quoted, shownName, socketName } from "./german-names.ts";
import type { Language } from "./language.ts";
import type { AnswerWords, NameWords, PhraseWords, ReportWords } from "./report-words.ts";

/** Chances and times. */
export const phrases: PhraseWords = {
  inHundred: (count) => `${count} von 100`,
  underOne: "weniger als 1 von 100",
  sure: {
    "almost certain": "fast sicher",
    "very likely": "sehr wahrscheinlich",
    likely: "wahrscheinlich",
    "more likely than not": "eher ja als nein",
    possible: "möglich",
  },
  underAMinute: "keine Minute",
  minutes: (count) => `etwa ${count} min`,
};

/** A name in quotation marks wants no article, and so no case. */
export const names: NameWords = {
  alone: shownName,
  socket: (part, socket) => `${shownName(part)}, ${socketName(socket)}`,
  within: quoted,
};

/** Where something was heard. */
export const heard: Language["heard"] = {
  "left ear": "ganz links",
  "right ear": "ganz rechts",
  middle: "Mitte",
  "off to the left": "etwas links",
  "off to the right": "etwas rechts",
  "all round": "rundherum, ohne Ort",
  "faint, left ear": "schwach, ganz links",
  "faint, right ear": "schwach, ganz rechts",
  "faint, middle": "schwach, Mitte",
  "faint, off to the left": "schwach, etwas links",
  "faint, off to the right": "schwach, etwas rechts",
  "faint, all round": "schwach, rundherum",
  nothing: "gar nichts",
};

const middleAt = (right: number): string => {
  if (right === 0) return "in der Mitte, so wie es ist";
  return right > 0
    ? `in der Mitte, wenn rechts ${right} dB lauter ist`
    : `in der Mitte, wenn links ${-right} dB lauter ist`;
};

/** Answers with no place on a head. */
export const answers: AnswerWords = {
  said: {
    "cup marked L": "Muschel mit L",
    "cup marked R": "Muschel mit R",
    "both cups": "beide Muscheln",
    "neither cup": "keine Muschel",
    something: "etwas",
    "nothing changes": "nichts ändert sich",
    "it comes and goes": "es setzt aus",
    "never in the middle": "nie in der Mitte",
  },
  middleAt,
  cannotTell: "weiß nicht",
  bursts: { "in phase": "gleich gepolt", opposite: "gegengepolt" },
};

/** What is said of a diagnosis. */
export const report: ReportWords = {
  at: (seat, check) => `${seat}, ${check}`,
  ofQuestion: (asked, question) => `${asked}, ${question}`,
  answered: (asked, given) => `${asked}: ${given}`,
  or: (some) => some.join(" oder "),
  inTurn: (some) => some.join(", dann "),
  otherTimes: (told, given) => `${told}; andere Male ${given}`,
  asExpected: (told) => `${told}; so wäre es damit.`,
  otherwise: (told, predicted, odds) =>
    `${told}; damit wäre es: ${predicted} (für das Gesagte ${odds}).`,
  turning: (asked, given) => `${asked}, wenn die Antwort lautet: ${given}`,
  unfit: "Nicht alle Antworten passen zusammen.",
  repairSooner: "Keine Prüfung hier lohnt noch die Zeit: Die Reparatur ist schneller versucht.",
  nothingWorth: "Nichts, was hier möglich ist, lohnt die Zeit.",
  notPossible: (text) => `geht hier nicht: ${text}`,
  nobodyAt: (seat) => `niemand da: ${seat}`,
  turnBack: "Zurückdrehen: jede Muschel an ihr eigenes Ohr",
  otherListener: (seat) => `Jemand anderen hören lassen: ${seat}`,
  notHere: (mend) =>
    `${mend}; nichts davon ist hier möglich: Darum muss sich jemand anders kümmern`,
  inShared: (text) => `${text}, und zwar in dem, was alle teilen`,
  inOwn: (text, seat) => `${text}, und zwar in dem, was nur ${seat} hat`,
  seenAt: (seen, into, plug) =>
    plug === undefined
      ? `${seen}, an ${quoted(into)}`
      : `${seen}, ${plugWords(plug)} an ${quoted(into)}`,
  inSocket: (socket) => `in der Buchse »${socket}«`,
};
