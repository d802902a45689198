import { counted } from "#core/report/phrases.ts";
import type { Words } from "#ui/words/use-words.ts";

type SheetWords = Words["sheet"];

const states: SheetWords["states"] = {
  "not heard": "nicht gehört",
  begun: "begonnen, nicht beendet",
  healthy: "in Ordnung",
  wrong: "falsch",
  unsure: "unsicher",
  absent: "niemand da",
  "as ordered": "so gewünscht",
};

const ends: SheetWords["ends"] = {
  mended: "behoben",
  "still there": "noch da",
  "not checked again": "es wurde eingegriffen, aber nicht noch einmal geprüft",
  "no longer suspected": "spätere Antworten sprachen dagegen",
};

export const sheet: SheetWords = {
  title: "Das Blatt zur Übergabe",
  open: "das Blatt",
  making: "Das Blatt wird geschrieben.",
  lead: "Was gehört, gefunden und behoben wurde, auf Papier: eine Seite für acht Plätze.",
  print: "Drucken oder als PDF sichern",
  csv: "Als CSV sichern",
  name: "Wie diese Sitzung heißt",
  who: "Wer geprüft hat",
  whoHere: "Name der Person, die geprüft hat",
  whoLabel: "von",
  noGear: "ein Aufbau ohne Geräte: die Fehler darin waren simuliert",
  rig: (name) => `Aufbau: ${name}`,
  healthy: (healthy, of) => `${healthy} von ${counted(of, "Platz", "Plätzen")} in Ordnung`,
  states,
  ends,
  positions: "Alle Plätze",
  position: "Platz",
  worn: "Getragen",
  result: "Ergebnis",
  level: "Testsignal",
  alike: (others) =>
    `oder ${counted(others, "weitere Möglichkeit", "weitere Möglichkeiten")}, die hier keine Prüfung davon unterscheidet`,
  unsure: (fault) => `am wahrscheinlichsten: ${fault}`,
  centred: "in der Mitte, wie es ist",
  rightUp: (level) => `in der Mitte, wenn rechts ${level} lauter ist`,
  leftUp: (level) => `in der Mitte, wenn links ${level} lauter ist`,
  neverCentred: "nie in der Mitte",
  wanted: (feed) => `hier gewünscht: ${feed}`,
  measured: (left, right) => `gemessen L ${left}, R ${right}`,
  found: "Gefundene Fehler",
  foundNone: "Keine.",
  told: "erkannt an dem, was half",
  by: (moves) => `nach: ${moves}`,
  notTested: "Nicht geprüft",
  unheard: (parts) =>
    `Fehler, die hier keine Prüfung von einer heilen Kette unterscheidet, ihre Zahl für jedes Teil: ${parts}`,
  unheardInEach: (first, last, faults) => `${first} bis ${last} (je ${faults})`,
  unheardIn: (part, faults) => `${part} (${faults})`,
  notHeard: (seats) => `Nicht gehört: ${seats}`,
  unfinished: (seats) => `Begonnen und nicht beendet: ${seats}`,
  file: "sitzung",
  columns: {
    kind: "was",
    name: "Name",
    worn: "getragen",
    result: "Ergebnis",
    detail: "Einzelheiten",
    sure: "sicher, von 100",
    level: "Testsignal, dBFS",
    balance: "rechts lauter bis zur Mitte, dB",
    left: "linkes Ohr, dB",
    right: "rechtes Ohr, dB",
    time: "Zeit",
    mended: "behoben durch",
  },
  kinds: { session: "Sitzung", position: "Platz", fault: "Fehler", notTested: "nicht geprüft" },
};
