import { words } from "./fault-words.ts";
import { boxes } from "./german-boxes.ts";
import { complaintWords } from "./german-complaints.ts";
import { refusals } from "./german-measuring.ts";
import { moves } from "./german-moves.ts";
import { noiseWords } from "./german-noises.ts";
import { patching } from "./german-patching.ts";
import { prompts } from "./german-prompts.ts";
import { answers, heard, names, phrases, report } from "./german-report.ts";
import { settings } from "./german-settings.ts";
import { sheet } from "./german-sheet.ts";
import { signalWords } from "./german-signals.ts";
import { wanted } from "./german-wanted.ts";
import { wearing } from "./german-wearing.ts";
import { where } from "./german-where.ts";
import { wires } from "./german-wires.ts";
import type { Language } from "./language.ts";

const checks: Language["checks"] = {
  left: {
    name: "ein Klopfen",
    before: "Ein Klopfen, zweimal.",
    questions: ["Wo war das Klopfen?"],
  },
  right: {
    name: "doppeltes Klopfen",
    before: "Zwei schnelle Klopfer, zweimal.",
    questions: ["Wo waren die Klopfer?"],
  },
  pair: {
    name: "zwei Rauschstöße",
    before: "Zweimal kurzes Rauschen, nacheinander.",
    questions: ["Wo war das erste?", "Wo war das zweite?"],
  },
  cup: {
    name: "Muschel berühren",
    before: "Ein Klopfen, zweimal. Eine Hand an die Muschel legen, in der es ist.",
    questions: ["Welcher Buchstabe steht auf der berührten Muschel?"],
  },
  silence: {
    name: "Stille",
    before: "Es wird nichts gespielt. Hinhören.",
    questions: ["War etwas zu hören?"],
  },
  balance: {
    name: "in die Mitte schieben",
    before: "Ein Rauschen, das andauert. In die Mitte des Kopfes schieben.",
    questions: ["Wo ist es in der Mitte?"],
  },
};

const effects: Language["effects"] = {
  straight: "links im linken Ohr, rechts im rechten",
  nothing: "nichts kommt an",
  "left gone": "die linke Seite kommt nicht an",
  "right gone": "die rechte Seite kommt nicht an",
  swapped: "links und rechts sind vertauscht",
  mono: "beide Ohren bekommen die Mono-Summe",
  difference: "beide Ohren bekommen links minus rechts: Was in der Mitte liegt, fehlt",
  "mono, one ear inverted": "beide Ohren bekommen dasselbe Mono, eines verpolt: hohl",
  "one side inverted": "eine Seite ist verpolt: Die Mitte hat keinen Ort",
  "left in both": "die linke Seite ist in beiden Ohren, die rechte fehlt",
  "right in both": "die rechte Seite ist in beiden Ohren, die linke fehlt",
  "left in both, one inverted":
    "die linke Seite ist in beiden Ohren, in einem verpolt: hohl; die rechte fehlt",
  "right in both, one inverted":
    "die rechte Seite ist in beiden Ohren, in einem verpolt: hohl; die linke fehlt",
  "left in the right ear": "die linke Seite ist im rechten Ohr, die rechte kommt nicht an",
  "right in the left ear": "die rechte Seite ist im linken Ohr, die linke kommt nicht an",
  "all in the left ear": "alles ist im linken Ohr",
  "all in the right ear": "alles ist im rechten Ohr",
  "left weak": "die linke Seite ist schwächer",
  "right weak": "die rechte Seite ist schwächer",
  mixed: "die Seiten sind ineinander vermischt",
};

/** Everything the program says about the rig and its faults, in German. */
export const german: Language = {
  phrases,
  names,
  report,
  faults: {
    ...wires,
    ...settings,
    ...boxes,
    ...wearing,
    ...wanted,
    "something not on the list": words(
      "es ist etwas, das nicht auf der Liste steht",
      "nicht zu sehen",
      "die Kette Stück für Stück mit geprüften Teilen durchgehen",
    ),
  },
  where,
  moves,
  operator: "wer mitschreibt",
  client: "wer das Signal bestellt hat",
  asOrdered: "es soll stereo sein",
  shared: "was alle teilen",
  byHand: {
    look: (place) => `Nachsehen: ${place}`,
    ask: (person) => `Nachfragen: ${person}`,
    twist: (part) => `Stecker von ${part} gedreht`,
    complaint: "die Beschwerde",
    continuity: (part, from, to) => `${part}, von ${from} nach ${to}`,
    matrix: "gemessen",
  },
  patching,
  prompts,
  signals: signalWords,
  sheet,
  refusals,
  heard,
  answers,
  complaints: complaintWords,
  noises: noiseWords,
  checks,
  effects,
  asItShouldBe: "alles, wie es sein soll",
  volumeFirst: "Erst leiser drehen",
  nowAndThen: ", zeitweise",
  neverTested: [
    "beide Seiten zugleich verpolt",
    "zwei Fehler, die sich aufheben",
    "der Pegel: laut genug oder zu laut",
    "was seltener als jedes zweite Mal auftritt",
    "ein Lautstärkeregler, der ganz unten ungleich läuft",
    "Hören mit nur einer Muschel",
    "was ins Pult hineingeht: Mikrofone, andere Wege, andere Panoramen",
  ],
};
