import type { Complaint } from "#core/checks/complaints.ts";
import type { ComplaintWords } from "./language.ts";

const oneEar: readonly Complaint[] = ["only the left ear works", "only the right ear works"];
const oneQuiet: readonly Complaint[] = ["left side quiet", "right side quiet"];
const leftDead: readonly Complaint[] = ["only the right ear works", "left side quiet"];
const rightDead: readonly Complaint[] = ["only the left ear works", "right side quiet"];
const middle: readonly Complaint[] = ["no voice", "hollow or thin"];
const thin: readonly Complaint[] = ["hollow or thin", "quiet on both sides", ...oneQuiet];
const loose: Complaint = "crackle, or it comes and goes";

/** Common practice, no source: what people at German stages say; that each may mean several things is the point. */
const means: ComplaintWords["means"] = {
  "nur ein Ohr geht": oneEar,
  "ein Ohr ist tot": [...oneEar, ...oneQuiet],
  tot: [...oneEar, "nothing at all"],
  "links ist tot": leftDead,
  "rechts ist tot": rightDead,
  "nur links": rightDead,
  "nur rechts": leftDead,
  "links fällt aus": [...leftDead, loose],
  "rechts fällt aus": [...rightDead, loose],
  "eine Seite ist leise": [...oneQuiet, ...oneEar],
  schief: [...oneQuiet, ...oneEar],
  Karaoke: middle,
  "keine Stimme": middle,
  "Gesang ist weg": middle,
  "Stimme weit weg": middle,
  "ein Instrument fehlt": ["a part is missing", "no voice", "the same in both ears"],
  hohl: ["hollow or thin", "no voice"],
  phasig: ["hollow or thin", "no voice", "something else"],
  "zu breit": ["hollow or thin", "no voice", "something else"],
  "wie unter Wasser": ["hollow or thin", "no voice", "quiet on both sides", "something else"],
  hallig: ["hollow or thin", "no voice", "something else"],
  dünn: thin,
  "wie aus der Dose": thin,
  "kein Bass": ["hollow or thin", "no voice", "quiet on both sides", "something else"],
  mono: [
    "the same in both ears",
    "a part is missing",
    "hollow or thin",
    "something else",
    ...oneEar,
  ],
  "kein Stereo": ["the same in both ears", "a part is missing", ...oneEar],
  seitenverkehrt: ["sides swapped"],
  "falsch herum": ["sides swapped", "something else"],
  komisch: ["sides swapped", "hollow or thin", "the same in both ears", "something else"],
  "zu leise": ["quiet on both sides", "nothing at all", "hollow or thin"],
  nichts: ["nothing at all", "quiet on both sides"],
  rauscht: ["hiss", "something else"],
  brummt: ["hum", "something else"],
  surrt: ["hum", loose, "something else"],
  knistert: [loose, "something else"],
  "alles gut": ["no complaint"],
  Wackelkontakt: [loose],
  "setzt aus": [loose, ...oneEar, "nothing at all"],
  "ändert sich beim Bewegen": [loose],
};

/** What is said of complaints. */
export const complaintWords: ComplaintWords = {
  said: {
    "only the left ear works": "nur das linke Ohr geht",
    "only the right ear works": "nur das rechte Ohr geht",
    "left side quiet": "die linke Seite ist leise",
    "right side quiet": "die rechte Seite ist leise",
    "quiet on both sides": "auf beiden Ohren zu leise",
    "nothing at all": "gar nichts",
    "no voice": "die Stimme ist weg",
    "hollow or thin": "hohl, dünn, weit weg",
    "the same in both ears": "auf beiden Ohren dasselbe",
    "a part is missing": "etwas fehlt",
    "sides swapped": "links und rechts sind vertauscht",
    hiss: "es rauscht",
    hum: "es brummt",
    "crackle, or it comes and goes": "es knistert oder setzt aus",
    "something else": "etwas anderes stimmt nicht",
    "no complaint": "alles gut",
  },
  means,
  eitherEar: "nur ein Ohr geht",
  meOrGear: {
    headphones:
      "Ohr oder Technik? Den Kopfhörer auf dem Kopf umdrehen. Bleibt die schlechte Seite am selben Ohr, hilft keine neue Technik: Hier werden Signale geprüft, keine Ohren, also zum Arzt. Wechselt sie das Ohr, liegt es an der Technik.",
    inEars:
      "Ohr oder Technik? In-Ears werden nie umgedreht und nie verliehen: einen geprüften Kopfhörer an derselben Buchse aufsetzen. Bleibt dasselbe Ohr schlecht, hilft keine neue Technik: Hier werden Signale geprüft, keine Ohren, also zum Arzt.",
  },
};
