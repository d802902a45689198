import type { Refusal } from "#core/drawing/edited.ts";
import type { Part } from "#core/parts/part.ts";
import type { JackSize } from "#core/parts/plugs.ts";
import type { Words } from "#ui/words/use-words.ts";

type Plug = Pick<Part["plugs"][number], "kind" | "size">;
type Socket = Pick<Part["sockets"][number], "kind" | "size">;

const sizeOf = (kind: string, size: JackSize = "6.35 mm"): string =>
  /^T|^four/.test(kind) ? ` ${size.replace(".", ",")}` : "";

const plug = ({ kind, size }: Plug): string =>
  kind === "link" ? "Funk oder digital" : `${kind === "RCA" ? "Cinch" : kind}${sizeOf(kind, size)}`;

const socketKinds: Readonly<Partial<Record<Socket["kind"], string>>> = {
  RCA: "Cinch",
  link: "Funk oder digital",
  "TRS with a deep spring": "TRS mit tiefer Feder",
  "four-pole, common on ring 2": "vierpolig, Masse auf Ring 2",
  "four-pole, common on sleeve": "vierpolig, Masse auf dem Schaft",
};

const socket = ({ kind, size }: Socket): string =>
  `${socketKinds[kind] ?? kind}${sizeOf(kind, size)}`;

const places = (count: number): string => (count === 1 ? "1 Platz" : `${count} Plätze`);

const plugBriefly = (one: Plug): string =>
  one.kind === "link" ? "Strecke" : plug(one).replace(" mm", "");

function refused(refusal: Refusal): string {
  switch (refusal.refused) {
    case "no name":
      return "Es braucht einen Namen: bitte einen eintragen, dann noch einmal drücken.";
    case "marks in the name":
      return "Ein Name steht später in Sätzen: bitte ohne Komma, Doppelpunkt und Schrägstrich.";
    case "name taken":
      return `Hier heißt schon etwas „${refusal.name}“: bitte einen anderen Namen.`;
    case "does not fit":
      return `Der Stecker (${plug(refusal.plug)}) von ${refusal.part} passt nicht in diese Buchse (${socket(refusal.socket)}). Einen Adapter dazwischen, ein anderes Kabel oder eine andere Steckergröße wählen.`;
    case "nothing free":
      return `${refusal.part} hat dafür keine freie Buchse. Zuerst einen Verteiler oder Verstärker dazwischensetzen.`;
    case "nothing joins":
      return "Kein Kabel der Liste verbindet die beiden. Eine andere Buchse wählen oder einen Adapter oder ein Gerät dazwischensetzen.";
    case "last position":
      return "Jemand muss hören: zuerst einen weiteren Platz anlegen.";
    case "socket in use":
      return `${refusal.by} steckt in ${refusal.socket}: zuerst umstecken oder entfernen.`;
    case "cannot be":
      return troubles[refusal.trouble.trouble](refusal.name);
  }
}

type Trouble = Extract<Refusal, { readonly refused: "cannot be" }>["trouble"]["trouble"];

const notUnderstood = (name: string) =>
  `${name} lässt sich so nicht einstellen: bitte einen anderen Wert.`;
const notThere = (name: string) =>
  `${name} würde in etwas stecken, das es nicht gibt. Zuerst einstecken.`;

const troubles: Readonly<Record<Trouble, (name: string) => string>> = {
  "hangs from nothing": (name) =>
    `${name} hinge an nichts. In eine andere Buchse stecken oder den Platz entfernen.`,
  "goes round": (name) =>
    `Das Signal liefe im Kreis zurück zu ${name}. Eine Buchse wählen, die davon wegführt.`,
  "not one feed": (name) =>
    `${name} bekäme Signal von zwei Geräten oder von keinem. Zuerst den anderen Stecker ziehen.`,
  "nobody listens": () => "Jemand muss hören: zuerst einen Platz anlegen.",
  "name taken": (name) => `Hier heißt schon etwas „${name}“: bitte einen anderen Namen.`,
  "a person": (name) => `${name} ist eine Person; Personen kommen von selbst hinzu.`,
  setting: notUnderstood,
  "settings together": notUnderstood,
  "no such part": notThere,
  "no such plug": notThere,
  "no such socket": notThere,
  "does not fit": (name) =>
    `Der Stecker von ${name} passt dort nicht. Eine andere Buchse oder ein anderes Kabel wählen.`,
  "used twice": (name) => `${name} müsste sich eine Buchse teilen. Eine freie wählen.`,
  "worn is no part": notThere,
  "not to be worn": (name) => `${name} kann niemand aufsetzen.`,
  "worn twice": (name) => `${name} säße auf zwei Köpfen.`,
};

export const rig: Words["rig"] = {
  heading: "Der Aufbau",
  how: "Zum Ändern antippen. Einen Stecker in eine andere Buchse ziehen oder etwas von unten dorthin, wo es hingehört.",
  done: "Diesen Aufbau prüfen",
  undo: "rückgängig",
  redo: "wiederholen",
  picture: "der Aufbau, von den Quellen bis zu den Ohren",
  positions: places,
  plug,
  plugBriefly,
  refused,
  loose: "hängt in der Luft",
  thing: (name, kind) => `${name}, ${kind}`,
  seat: (name, worn) => `${name}, Platz mit ${worn}`,
  end: (what, socketName, part) => `${what} in ${socketName} von ${part}`,
  looseEnd: (what, part) => `${what} von ${part}, in keiner Buchse`,
  lead: (name, kind, ends) => `${name}, ${kind}: ${ends}`,
  at: (socketName, part) => `${socketName} von ${part}`,
  before: (plugName, part, socketName) =>
    `im Weg von ${part}, vor dem Stecker ${plugName} in ${socketName}`,
  inFront: (part) => `vor ${part}`,
  run: (count) => `${count} gleiche`,
  free: (count) => (count === 1 ? "1 freie Buchse" : `${count} freie Buchsen`),
  things: "Zum Hinzufügen",
  moreThings: "alles, was es gibt",
  whereTo: (kind) => `Wohin damit: ${kind}?`,
  noPlace:
    "Hier nimmt es gerade nichts auf. Eine Buchse freimachen oder zuerst einen Verteiler oder Verstärker dazwischensetzen.",
  putAway: "weglegen",
  name: "benennen",
  tape: "Was auf dem Klebeband steht",
  partName: (kind) => `Wie es heißt: ${kind}`,
  nameIt: "so nennen",
  copy: "kopieren",
  rePlug: "umstecken",
  rePlugEnd: (what, socketName) => `${what} aus ${socketName} umstecken`,
  whichSocket: "In welche Buchse?",
  noSocket: "Keine andere Buchse hier nimmt diesen Stecker.",
  swaps: (part) => `tauscht mit ${part}`,
  pull: "herausziehen",
  put: "etwas einstecken",
  whatIn: "Was kommt hinein?",
  between: "etwas dazwischensetzen",
  source: "eine Quelle davorsetzen",
  otherLead: "anderes Kabel",
  noOtherLead: "Keine andere Art Kabel verbindet diese Buchsen.",
  change: "ändern",
  otherKind: "andere Art",
  set: "übernehmen",
  earlier: "früher hören",
  later: "später hören",
  remove: "entfernen",
  removeWith: (count) => `entfernen, mit ${places(count)} daran`,
  ownWay: "auf seinem Weg",
  drop: (what) => `nach ${what}`,
  undone: "Die letzte Änderung ist rückgängig.",
  redone: "Sie gilt wieder.",
};
