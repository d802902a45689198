import type { Words } from "#ui/words/use-words.ts";

const curtain: Words["verdict"]["curtain"] = {
  number: (seed) => `Hinter dem Vorhang von Aufbau Nummer ${seed}`,
  another: "Ein anderer Aufbau mit einem Fehler",
  setRight: "Behoben: Der Fehler ist aus dem Aufbau verschwunden.",
  aside: "Aus dem Weg geräumt: Der Fehler steckt in dem, was beiseitegelegt wurde.",
  named: "Er war unter den genannten.",
  notNamed: (odds) => `Er wurde nicht genannt: bisher ${odds}.`,
};

export const verdict: Words["verdict"] = {
  notSure: "Nicht sicher.",
  odds: (sure, odds) => `${sure}, ${odds}`,
  orOthers: (others, odds) =>
    others === 1
      ? `Oder ein anderer, den hier keine Prüfung davon trennt: ${odds}.`
      : `Oder einer von ${others} anderen, die hier keine Prüfung davon trennt: ${odds}.`,
  likeliest: (why, fault, odds) => `${why} Am wahrscheinlichsten: ${fault} (${odds}).`,
  muted: "Jetzt stumm, für Hände an den Geräten",
  alike: (count) => `Diese ${count} trennt hier keine Prüfung, eine Reparatur schon`,
  notRuledOut: "Nicht ausgeschlossen",
  toldBy: (turning) => `Das trennt: ${turning}.`,
  nothingTells: "Hier trennt es nichts.",
  why: "Warum",
  left: (minutes) => `${minutes}, bis alles läuft`,
  whyNext: "Warum das als Nächstes",
  expected: "Erwartet, bis alles läuft, wenn es so beginnt:",
  step: (step, long) => `${step}: ${long}`,
  asLong: "etwa gleich lang",
  longer: (seconds) => `${seconds} s länger`,
  notTested: "Was nicht geprüft wurde",
  healthy: "In Ordnung",
  nothingFound: (odds) =>
    `Diese Prüfungen haben nichts gefunden: links im linken Ohr, rechts im rechten, die Mitte in der Mitte. Ein Fehler bleibt möglich: ${odds}.`,
  onTo: (seat) => `Weiter zu ${seat}`,
  toBoard: "Zur Übersicht",
  itWas: (fault, odds) => `Es war: ${fault} (${odds}).`,
  likelyWas: (fault, odds) => `Höchstwahrscheinlich war es: ${fault} (${odds}).`,
  orMore: (fault, more) =>
    more === 1
      ? `${fault}, oder ein ähnlicher Fehler`
      : `${fault}, oder einer von ${more} ähnlichen`,
  orWas: (some) => `Oder: ${some.map(({ text, odds }) => `${text} (${odds})`).join("; ")}.`,
  aside: (part) => `${part} bleibt beiseite: ersetzen oder reparieren.`,
  putBack: "zurückstecken: Kommt der Fehler wieder?",
  good: (part) => `${part}, intakt`,
  curtain,
};
