import type { Refusal } from "#core/drawing/edited.ts";
import type { Part } from "#core/parts/part.ts";
import type { JackSize } from "#core/parts/plugs.ts";
import { counted } from "#core/report/phrases.ts";
import { endName, shownName, socketName } from "#core/words/german-names.ts";
import { withComma } from "#core/words/german-numbers.ts";
import type { Words } from "#ui/words/use-words.ts";

type Plug = Pick<Part["plugs"][number], "kind" | "size">;
type Socket = Pick<Part["sockets"][number], "kind" | "size">;

const kinds: Readonly<Partial<Record<(Plug | Socket)["kind"], string>>> = {
  RCA: "Cinch",
  link: "Funk oder digital",
  "TRS with a deep spring": "TRS mit tiefer Feder",
  "four-pole, common on ring 2": "vierpolig, Masse auf Ring 2",
  "four-pole, common on sleeve": "vierpolig, Masse auf dem Schaft",
};

const sized = (kind: string, size: JackSize = "6.35 mm"): string =>
  kind.replace(/^(TR{0,2}S|vierpolig)/, `$1 ${withComma(size)}`);

const plug = ({ kind, size }: Plug | Socket): string => sized(kinds[kind] ?? kind, size);

const plugBriefly = (one: Plug): string =>
  one.kind === "link" ? "Strecke" : plug(one).replace(" mm", "");

function refused(refusal: Refusal): string {
  switch (refusal.refused) {
    case "no name":
      return "Ohne Namen geht es nicht: einen eintragen, dann noch einmal drücken.";
    case "marks in the name":
      return "Ein Name steht später in Sätzen: bitte ohne Komma, Doppelpunkt und Schrägstrich.";
    case "name taken":
      return `Den Namen „${refusal.name}“ gibt es hier schon: bitte einen anderen wählen.`;
    case "does not fit":
      return `Der Stecker (${plug(refusal.plug)}) von ${shownName(refusal.part)} passt nicht in diese Buchse (${plug(refusal.socket)}). Einen Adapter dazwischen, ein anderes Kabel oder eine andere Steckergröße wählen.`;
    case "nothing free":
      return `${shownName(refusal.part)} hat dafür keine freie Buchse. Zuerst einen Verteiler oder Verstärker dazwischensetzen.`;
    case "nothing joins":
      return "Kein Kabel der Liste verbindet die beiden. Eine andere Buchse wählen oder einen Adapter oder ein Gerät dazwischensetzen.";
    case "last position":
      return "Ein Platz muss bleiben: zuerst einen weiteren anlegen.";
    case "socket in use":
      return `${shownName(refusal.by)} steckt in ${socketName(refusal.socket)}: zuerst umstecken oder entfernen.`;
    case "cannot be":
      return troubles[refusal.trouble.trouble](shownName(refusal.name));
  }
}

type Trouble = Extract<Refusal, { readonly refused: "cannot be" }>["trouble"]["trouble"];

const notUnderstood = (name: string) =>
  `${name} lässt sich so nicht einstellen: bitte einen anderen Wert wählen.`;
const notThere = (name: string) =>
  `Das, worin ${name} stecken soll, ist nicht da. Zuerst einstecken.`;

const troubles: Readonly<Record<Trouble, (name: string) => string>> = {
  "hangs from nothing": (name) =>
    `${name} hinge in der Luft. Stattdessen in eine andere Buchse stecken oder den Platz entfernen.`,
  "goes round": (name) =>
    `Das Signal liefe im Kreis zurück zu ${name}. Eine Buchse wählen, die davon wegführt.`,
  "not one feed": (name) =>
    `${name} bekäme das Signal von zwei Geräten oder von keinem. Zuerst den anderen Stecker ziehen.`,
  "nobody listens": () => "Noch hört niemand: zuerst einen Platz anlegen.",
  "name taken": (name) => `Den Namen „${name}“ gibt es hier schon: bitte einen anderen wählen.`,
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
  "not to be worn": (name) => `${name} kann niemand tragen.`,
  "worn twice": (name) => `${name} säße auf zwei Köpfen.`,
};

export const rig: Words["rig"] = {
  heading: "Der Aufbau",
  how: "Zum Ändern antippen. Einen Stecker in eine andere Buchse ziehen oder etwas von unten dorthin, wo es hingehört.",
  done: "Diesen Aufbau prüfen",
  undo: "rückgängig",
  redo: "wiederholen",
  picture: "der Aufbau, von den Quellen bis zu den Ohren",
  positions: (count) => counted(count, "Platz", "Plätze"),
  plug,
  plugBriefly,
  refused,
  loose: "hängt in der Luft",
  thing: (name, kind) => `${shownName(name)}, ${kind}`,
  seat: (name, worn) => `${name}, Platz mit ${shownName(worn)}`,
  end: (what, socket, part) => `${what} in ${socketName(socket)} von ${shownName(part)}`,
  looseEnd: (what, part) => `${what} von ${shownName(part)}, in keiner Buchse`,
  lead: (name, kind, ends) => `${shownName(name)}, ${kind}: ${ends}`,
  at: (socket, part) => `${socketName(socket)} von ${shownName(part)}`,
  before: (end, part, socket) => {
    const at = end === undefined ? "" : `am Stecker »${endName(end)}«`;
    const where = [at, socket === "" ? "" : `in ${socket}`].filter(Boolean).join(" ");
    return [`vor ${shownName(part)}`, where].filter(Boolean).join(", ");
  },
  inFront: (part) => `vor ${shownName(part)}`,
  run: (count) => `${count} gleiche`,
  free: (count) => counted(count, "freie Buchse", "freie Buchsen"),
  things: "Hinzufügen",
  moreThings: "alles, was es gibt",
  whereTo: (kind) => `Wohin damit: ${kind}?`,
  noPlace:
    "Dafür ist hier gerade nichts frei. Eine Buchse freimachen oder zuerst einen Verteiler oder Verstärker dazwischensetzen.",
  putAway: "weglegen",
  name: "benennen",
  tape: "Was auf dem Klebeband steht",
  partName: (kind) => `Wie soll es heißen: ${kind}`,
  nameIt: "so nennen",
  copy: "kopieren",
  rePlug: "umstecken",
  rePlugEnd: (what, socket) => `${what} aus ${socket} umstecken`,
  whichSocket: "In welche Buchse?",
  noSocket: "Keine andere Buchse hier nimmt diesen Stecker.",
  swaps: (part) => `tauscht mit ${shownName(part)}`,
  pull: "herausziehen",
  put: "etwas einstecken",
  whatIn: "Was kommt hinein?",
  between: "etwas dazwischensetzen",
  source: "eine Quelle davorsetzen",
  otherLead: "anderes Kabel",
  noOtherLead: "Kein anderes Kabel der Liste verbindet diese Buchsen.",
  change: "ändern",
  otherKind: "andere Art",
  set: "übernehmen",
  earlier: "früher anhören",
  later: "später anhören",
  remove: "entfernen",
  removeWith: (count) => `entfernen, samt ${counted(count, "Platz", "Plätzen")} daran`,
  ownWay: "auf dem Weg dorthin",
  drop: (what, where) => `${what} in ${where}`,
  grown: (part, count, sockets) => `${shownName(part)} war voll und hat jetzt ${count} ${sockets}.`,
  undone: "Die letzte Änderung ist zurückgenommen.",
  redone: "Die Änderung gilt wieder.",
};
