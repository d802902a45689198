import type { FlexSaid } from "#ui/words/flex-said.ts";
import type { Words } from "#ui/words/use-words.ts";

const faults = {
  tip: { gone: "links weg", down: "links leiser um", at: "Ader der Spitze" },
  ring: { gone: "rechts weg", down: "rechts leiser um", at: "Ader des Rings" },
  "tip and ring": {
    gone: "beide Seiten weg",
    down: "beide Seiten leiser um",
    at: "Adern von Spitze und Ring",
  },
  sleeve: {
    gone: "Rückleiter weg, nur noch die Differenz da",
    down: "Rückleiter schwach, die Mitte leiser um",
    at: "Ader des Schafts",
  },
  "tip to ring": {
    gone: "links und rechts in Berührung",
    down: "links und rechts in Berührung, ihre Differenz leiser um",
    at: "Spitze gegen Ring",
  },
  mixed: {
    gone: "die andere Seite sprach über",
    down: "die andere Seite sprach über, leiser um",
    at: "Spitze gegen Ring, oder der Schaft",
  },
};

function event({ fault, down, breaks, lasted, going, shorted }: FlexSaid): string {
  const words = faults[fault];
  const what = down === undefined ? words.gone : `${words.down} ${down}`;
  const time =
    breaks > 1 ? `${breaks}-mal in ${lasted}` : `${lasted} lang${going ? " bisher" : ""}`;
  return `${what}, ${time}${shorted ? ", Kurzschluss" : ""}, ${words.at}`;
}

const events = (count: number): string => (count === 1 ? "1 Aussetzer" : `${count} Aussetzer`);

export const flex: Words["flex"] = {
  title: "Ein Kabel biegen und zusehen",
  before: {
    title: "Das Kabel zwischen Ausgang und Eingang stecken",
    hint: "Dann der Länge nach biegen, während vier Töne hindurchlaufen. Was für 2 ms oder länger aussetzt, wird gemeldet: wann, wie lange und welche Ader.",
    start: "Leise starten",
    byHand: "Pegel von Hand",
  },
  live: {
    refused: "Es kann noch nichts beobachten",
    still: "Stillhalten",
    bend: "Biegen, von Stecker 1 bis Stecker 2",
    bendHint: "Langsam; Leertaste oder Knopf drücken, wenn die Hand an einem Stecker vorbeikommt.",
    stillHint: "Eine Sekunde lang: Was jetzt zurückkommt, gilt als richtig.",
    asLoudAsMay: "Lauter darf es nicht werden; reicht das nicht, Gain am Eingang hinauf.",
    stop: "Anhalten",
    colour: "Farbe",
    tick: "ein Ticken bei jedem Aussetzer",
    tickOut:
      "Das Ticken kommt dort heraus, wo der Ton für Ohren hingeht, mit eigenem Pegel; es beginnt leise.",
    noTick:
      "Kein Ticken: Es käme aus dem Ausgang, der das Kabel speist. Auf der ersten Seite, unter »Wohin der Ton geht«, lässt sich für Ohren ein anderer wählen.",
    strip: (seconds, count) => `Links und rechts in den letzten ${seconds} Sekunden: ${count}`,
    nothing: "Bisher hat nichts ausgesetzt.",
    last: (said, count) => `${said} (${count}).`,
    watched: (long) => `Beobachtet seit ${long}.`,
  },
  lead: {
    plain: "Das Kabel, Stecker 1 bis Stecker 2",
    flagged: (count) => `Das Kabel, Stecker 1 bis Stecker 2, mit ${count} markierten Stellen`,
    hand: (plug) => `Hand an Stecker ${plug}`,
    space: "Leertaste",
  },
  event,
  count: (count) => (count === 0 ? "bisher nichts" : events(count)),
  place: {
    plug: (plug) => `an Stecker ${plug}`,
    tenths: (tenths) => `etwa ${tenths} Zehntel des Wegs von Stecker 1 zu Stecker 2`,
    after: (long, plug) => `${long} nachdem die Hand an Stecker ${plug} vorbei war`,
    before: (long, plug) => `${long} bevor die Hand an Stecker ${plug} vorbeikam`,
    unknown: "Stelle unbekannt: Es wurde kein Stecker markiert",
  },
  limits: {
    sleeve:
      "Der Schaft: nicht geprüft. Aus- und Eingang haben schon eine gemeinsame Masse, ein fehlender Schaft fällt nirgends auf. Mit einer Lastbox ist er zu sehen; auch mit Ohren und Multimeter.",
    "left only": "Die rechte Seite: Von ihr kommt nichts zurück, ihre Ader wurde nicht beobachtet.",
    "right only": "Die linke Seite: Von ihr kommt nichts zurück, ihre Ader wurde nicht beobachtet.",
    "one input":
      "Beide Seiten kommen an einem Eingang an: Eine fehlende Seite ist zu sehen, ein fehlender Schaft oder zwei Adern in Berührung nicht.",
  },
  refused: {
    "no signal":
      "Vom Signal kommt nichts zurück. Nachsehen, ob das Kabel an beiden Enden steckt und der Eingang der richtige ist; dann lauter, Stufe für Stufe.",
    clipped: "Der Eingang übersteuert. Gain herunter, oder leiser.",
    "too noisy to see 2 ms":
      "Gegen das Rauschen zu leise, um 2 ms zu sehen. Gain am Eingang hinauf, oder lauter.",
    "sides mixed":
      "Links und rechts kommen vermischt zurück, wie durch eine Mono-Taste oder ein Kabel, das sie verbindet. Das zuerst herausnehmen, dann noch einmal starten.",
  },
  result: {
    stoppedBy: (trouble) => `${trouble} Was bis dahin zu sehen war, steht unten.`,
    nothing: (long) => `Kein Aussetzer in ${long}`,
    events: (count, long) => `${events(count)} in ${long}`,
    eventsAndWorst: (count, long, worst) => `${events(count)} in ${long}, der schlimmste: ${worst}`,
    strip: (long) => `Links und rechts über die ganze Zeit von ${long}`,
    at: (moment, place) => `Bei ${moment}, ${place}.`,
    worstFirst: "Die schlimmsten zuerst",
    more: (count) => `${count} weitere`,
    beside: "Was so nicht zu sehen war, und was sonst noch war",
    again: "Noch einmal beobachten",
    over: "Zwischen den Spuren: was von einer Seite auf die andere überspricht; hängt es nach unten, ist es verpolt.",
  },
  beside: {
    earlier: (count, until, broken) =>
      `${count === 1 ? "1 früherer" : `${count} frühere`} Aussetzer bis ${until}, zusammen ${broken}, nicht mehr einzeln aufgeführt.`,
    disturbed: (count, long) =>
      `${count === 1 ? "1 Störung" : `${count} Störungen`}, zusammen ${long}, die kein Kabelfehler erklärt: Störungen von anderswo, oder eine Hand am Metall.`,
    blind: (long, why) => `${long} lang war nichts zu sehen: ${why}.`,
    why: {
      "no signal": "kein Signal",
      clipped: "übersteuert",
      "too noisy to see 2 ms": "zu viel Rauschen, um 2 ms zu sehen",
      "sides mixed": "Seiten vermischt",
    },
    crosstalk: (at, level) => `Bei ${at} lag das Übersprechen auf die andere Seite bei ${level}.`,
    left: (at, level) => `Bei ${at} war links langsam auf ${level} gegenüber dem Anfang gegangen.`,
    right: (at, level) =>
      `Bei ${at} war rechts langsam auf ${level} gegenüber dem Anfang gegangen.`,
  },
};
