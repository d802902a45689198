import type { LevelChange } from "#core/session/compared.ts";
import { withComma } from "#core/words/german-numbers.ts";
import type { Words } from "#ui/words/use-words.ts";

type Sessions = Words["sessions"];

const ears = { left: "links", right: "rechts" };

const refused: Sessions["refused"] = {
  empty: "Die Datei ist leer.",
  "not JSON": "Das ist keine Sitzung: Die Datei ist nicht in JSON geschrieben.",
  "cut off": "Die Datei bricht ab, bevor ihr Aufbau ganz dasteht: Nichts davon ist zu gebrauchen.",
  "too deep": "Das ist keine Sitzung: Es stehen viel mehr Klammern ineinander als in einer.",
  "no session": "Das ist keine Sitzung: Nichts in der Datei sagt, dass sie eine ist.",
  "another format": "Das ist eine Datei anderer Art, keine Sitzung.",
  "a newer version":
    "Eine neuere Fassung dieses Programms hat die Datei geschrieben. Die Seite neu laden, dann die Datei noch einmal einlesen.",
  "no log": "Die Sitzung in dieser Datei hat keine Einträge.",
  "no rig": "In dieser Datei steht kein Aufbau, der zu verstehen wäre.",
  "too large": "Die Datei ist größer als jede Sitzung: mehr als 20 MB.",
  unreadable: "Der Browser konnte die Datei nicht lesen. Bitte noch einmal wählen.",
  "not kept":
    "Die Datei ist eine Sitzung, ließ sich hier aber nicht aufheben. Die Datei bitte behalten.",
};

const lost: Readonly<Record<Parameters<Sessions["lost"]>[0]["why"], string>> = {
  "not understood": "nicht zu verstehen",
  "an id that is taken": "die Nummer hat schon ein anderer",
  "takes back what is not there": "nimmt zurück, was nicht da ist",
};

const number = (value: number): string => withComma(String(Math.abs(value)));

const change = (one: LevelChange): string => {
  const size = `${number(one.by)} dB`;
  const word = one.by < 0 ? "verloren" : "gewonnen";
  switch (one.change) {
    case "ear":
      return `hat ${ears[one.ear]} ${size} ${word}`;
    case "balance":
      return `hat ${ears[one.ear]} ${size} gegen die andere Seite ${word}`;
    case "played":
      return `wurde ${size} ${one.by < 0 ? "leiser" : "lauter"} gespielt`;
  }
};

const changed = (count: number): string => {
  if (count === 0) return "Nichts hat sich geändert";
  return count === 1 ? "Ein Platz hat sich geändert" : `${count} Plätze haben sich geändert`;
};

export const sessions: Sessions = {
  kept: (count) => {
    if (count === 0) return "Noch ist nichts aufgehoben";
    return count === 1 ? "Eine Sitzung" : `${count} Sitzungen`;
  },
  hint: "Auf eine drücken, um mit ihr weiterzumachen.",
  none: "Was ab jetzt geprüft wird, bleibt in diesem Browser, nur auf diesem Gerät.",
  loading: "Einen Augenblick…",
  notRead: "Die Sitzungen waren nicht zu lesen",
  notReadHint: "Was aufgehoben ist, bleibt, wo es ist.",
  readAgain: "Noch einmal nachsehen",
  unread: "Eine Sitzung, die nicht zu verstehen ist",
  unreadHint: (count) =>
    `${count === 1 ? "Ein Eintrag" : `${count} Einträge`}, darunter kein Aufbau. Als Datei gesichert geht nichts davon verloren.`,
  bench: "Ein Aufbau ohne Geräte",
  noted: (healthy, wrong, unsure, of) =>
    [
      healthy > 0 ? `${healthy} von ${of} in Ordnung` : "",
      wrong > 0 ? `${wrong} falsch` : "",
      unsure > 0 ? `${unsure} nicht sicher` : "",
      healthy + wrong + unsure === 0 ? "noch nichts entschieden" : "",
    ]
      .filter(Boolean)
      .join(", "),
  notHeard: "noch nichts gehört",
  here: "in Arbeit",
  by: (who) => `von ${who}`,
  more: (name) => `Mehr zu ${name}`,
  moreShort: "mehr",
  rename: "Umbenennen",
  name: "Name der Sitzung",
  tomorrow: "Mit diesem Aufbau neu beginnen",
  compare: "Mit einer anderen vergleichen",
  save: "Als Datei sichern",
  saveBench: "Als Datei sichern, mit der Nummer des versteckten Fehlers",
  remove: "Löschen",
  removed: (name) => `${name} ist gelöscht. Einen Tag lang ist sie zurückzuholen.`,
  restore: "Zurückholen",
  bringIn: "Eine aus einer Datei einlesen",
  dropHere: "oder hier ablegen",
  refused,
  broughtIn: (name) => `${name} ist eingelesen.`,
  hereAlready: (name) => `${name} ist schon da.`,
  cutOff: "Das Ende der Datei fehlt; was davor steht, ist da.",
  leftOut: (count) =>
    count === 1 ? "Ein Eintrag wurde weggelassen:" : `${count} Einträge wurden weggelassen:`,
  lost: ({ place, entry, why }) =>
    `Nummer ${place}${entry === undefined ? "" : ` (${entry})`}: ${lost[why]}`,
  withWhich: (name) => `${name} mit welcher vergleichen?`,
  since: (name, date) => `Seit ${name}, ${date}`,
  noneCompared: "Noch ist nichts zu vergleichen",
  changed: (count, compared, of) =>
    compared === of
      ? changed(count)
      : `${changed(count)}; ${compared} von ${of} waren zu vergleichen`,
  change,
  another: "Das ist ein anderer Aufbau",
  anotherMore:
    "Kein Name auf einem Klebeband stimmt überein, und auch sonst zeigt nichts, dass es derselbe Aufbau ist: Es gibt nichts zu vergleichen.",
  asBefore: "wie zuvor",
  wanted: (was, is) => `gewünscht war: ${was}; gewünscht ist jetzt: ${is}`,
  was: (was, is) => `war ${was}, jetzt: ${is}`,
  stood: {
    "not heard": "nicht gehört",
    begun: "nicht beendet",
    healthy: "in Ordnung",
    wrong: "falsch",
    unsure: "unsicher",
    absent: "niemand da",
  },
  gaps: {
    "only then": "ist nicht mehr in diesem Aufbau",
    "only now": "war nicht in jenem Aufbau",
    "not heard then": "wurde damals nicht gehört",
    "not heard now": "wurde noch nicht gehört",
    "no levels in both": "Pegel sind nicht zu vergleichen: Sie wurden nicht beide Male gemessen",
  },
  gone: (parts) => `Nicht mehr da: ${parts}.`,
  come: (parts) => `Neu: ${parts}.`,
};
