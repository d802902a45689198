import type { Words } from "#ui/words/use-words.ts";

type Side = 0 | 1;
const sides = ["Links", "Rechts"] as const;
const other = (side: Side): Side => (side === 0 ? 1 : 0);
const polarity = (sign: 1 | -1 | undefined): string => {
  if (sign === undefined) return "";
  return sign === 1 ? ", gleich gepolt" : ", verpolt";
};

export const returning: Words["returning"] = {
  title: "Mit dem Interface messen",
  before: {
    good: "Ein Kabel einstecken, das sicher in Ordnung ist",
    any: "Das Kabel einstecken",
    hint: "Töne gehen auf beiden Seiten zugleich hinaus, zuerst leise; elf Sekunden von dem, was zurückkommt, sagen, was jede Seite tut.",
    measureGood: "Das gute messen",
    measure: "Messen",
    byHand: "Pegel von Hand",
    against: "Wogegen",
    healthy: "gegen ein gutes Kabel",
    healthyNote: "zuerst gemessen, am selben Platz: jeder Verlust ist zu sehen",
    asItComes: "wie es kommt",
    asItComesNote: "sofort; was beide Seiten gemeinsam verlieren, ist nicht zu sehen",
  },
  byHand: {
    title: "Lauter, bis genug zurückkommt",
    hint: "Stufe für Stufe: bis 40 dB über dem, was der Eingang von selbst zeigt, und nie bis an den Anschlag.",
    measure: "Mit diesem Pegel messen",
    stop: "anhalten",
  },
  measuring: { title: "Messung läuft", hint: "Das Kabel in Ruhe lassen, bis sie fertig ist." },
  judging: "Wird ausgewertet",
  swap: {
    good: {
      title: "Jetzt das fragliche Kabel, an dieselbe Stelle",
      hint: "Das gute ist gemessen, und es ist still. Herausnehmen, das andere einstecken und sonst nichts anfassen: kein Gain, keinen Pegel.",
      anew: "ein anderes gutes",
    },
    last: {
      title: "Jetzt das nächste Kabel, an dieselbe Stelle",
      hint: "Es ist still. Sonst nichts anfassen: kein Gain, keinen Pegel.",
      anew: "von vorn",
    },
    measure: "Messen",
  },
  told: {
    onceMore:
      "Was es ist, lässt sich daraus noch nicht sagen. Das Kabel stecken lassen, nichts anfassen und noch einmal messen.",
    same: "Dasselbe noch einmal messen",
    next: "Das nächste messen",
    anew: "von vorn",
  },
  refused: {
    notHealthy: "Das ist nicht in Ordnung",
    title: "So ist es nicht zu beurteilen",
    again: "Noch einmal messen",
    back: "Zurück zum Anschließen",
    asItComes: "messen, wie es kommt",
    nothingBack:
      "Das Signal ist nicht da oder geht im Rauschen unter. Nachsehen, ob das Kabel an beiden Enden steckt und der richtige Aus- und Eingang gewählt ist; sonst Gain am Eingang hinauf.",
    noMeasure: (why) =>
      `Als Maßstab taugt es nicht: ${why}. Ein anderes Kabel nehmen, das sicher in Ordnung ist, oder nachsehen, ob beide Enden und beide Eingänge wie gezeichnet stecken.`,
    why: {
      "only one input was heard": "nur ein Eingang war zu hören",
      "a side is missing": "eine Seite fehlt",
      "a side comes over on the other": "eine Seite spricht auf die andere über",
      "one side is upside down": "eine Seite ist verpolt",
    },
    noWorker:
      "Der Teil, der auswertet, wurde nicht geladen, oder der Speicher reicht nicht. Andere Seiten schließen und noch einmal messen.",
  },
  result: {
    oneInput: "Nur ein Eingang war zu hören",
    matrixHint: "Das käme davon an den Ohren an, nach den Pegeln bei 1 kHz.",
    oneInputHint: "Was am anderen ankommt, ist nicht bekannt: das ist die Hälfte.",
    againstHealthy: "Pegel links und rechts gegen das gute Kabel, von 100 Hz bis 15 kHz.",
    asItComes:
      "Wie es kommt: Pegel gegen das Stärkste, das kam, von 100 Hz bis 15 kHz. Was beide Seiten gemeinsam verloren haben, ist nicht zu sehen.",
    oneStretch: "Von den zwei Abschnitten des Signals ist nur einer ganz da.",
    more: "Rauschen, Brummen, Klirr, Verzögerung",
    sleeveElsewhere:
      "Der Schaft: nicht geprüft, außer Player und Recorder hatten keine gemeinsame Masse als dieses Kabel.",
  },
  side: {
    gone: (side) => `${sides[side]}: kommt nicht zurück.`,
    told: (side, level, sign) => `${sides[side]}: ${level}, ${sign}.`,
    even: "0,0 dB",
    down: (level) => `${level} leiser`,
    up: (level) => `${level} lauter`,
    unknown: "Polung nicht festzustellen",
    asSent: "richtig gepolt",
    inverted: "verpolt",
  },
  over: {
    none: (from, input, under) =>
      `Nichts von ${sides[from]} in Eingang ${input}, bis ${under} unter ${sides[other(from)]}.`,
    asLoud: (from, input, sign) =>
      `${sides[from]} spricht auf Eingang ${input} über, so laut wie ${sides[other(from)]}${polarity(sign)}.`,
    under: (from, input, under, sign) =>
      `${sides[from]} spricht auf Eingang ${input} über, ${under} unter ${sides[other(from)]}${polarity(sign)}.`,
  },
  time: {
    same: "Beide Seiten kommen gleichzeitig.",
    late: (side, by) => `${sides[side]} kommt ${by} nach der anderen Seite.`,
    round: (delay) =>
      `Ganz herum in ${delay}, vom Beginn der Aufnahme an; das meiste davon macht der Rechner.`,
    clocksAlike:
      "Die Takte von Aus- und Eingang unterscheiden sich um weniger als 0,1 Millionstel.",
    clocks: (by) => `Die Takte von Aus- und Eingang unterscheiden sich um ${by} Millionstel.`,
  },
  beside: {
    line: (input, facts) => `Eingang ${input}: ${facts.join("; ")}.`,
    noise: (level) => `Rauschen ${level} dBFS`,
    noiseUnder: (level, under) => `Rauschen ${level} dBFS, ${under} unter dem Signal`,
    noHum: "kein Brummen, das heraussticht",
    hum: (mains, worst, level) =>
      `Netzbrummen (${mains} Hz), am stärksten bei ${worst} Hz: ${level} dBFS`,
    distortion: (second, third) => `Klirr zweiter Ordnung ${second}, dritter ${third}`,
    under: (percent) => `unter ${percent} %`,
    percent: (percent) => `${percent} %`,
  },
  recording: {
    title: "Eine Aufnahme von anderswo",
    how: "»multitone« aus den Dateien zum Mitnehmen abspielen und als WAV aufnehmen, was zurückkommt: beide Kanäle, von vor dem ersten Klick bis zum Ende. Die Datei bleibt auf diesem Gerät.",
    choose: "WAV wählen oder hierher ziehen",
    reading: "Die Aufnahme wird gelesen",
    share: (percent, name) => `${percent} % von ${name}`,
    failed: "Sie war nicht zu lesen",
    failedWhy:
      "Der Teil, der Aufnahmen liest, wurde nicht geladen, oder der Speicher reicht nicht. Andere Seiten schließen und die Datei noch einmal wählen.",
    cannot: (name) => `${name} ist nicht zu lesen`,
    notIn: "Das Signal ist nicht darin",
    name: (name) => `${name}.`,
    playings: "Durchläufe",
    at: (moment) => `bei ${moment}`,
    channels: (channels) => `Links und rechts sind die Kanäle ${channels.join(" und ")} der Datei.`,
  },
};
