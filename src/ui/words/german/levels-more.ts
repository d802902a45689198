import type { Words } from "#ui/words/use-words.ts";

export const levelsMore: Words["levelsMore"] = {
  hear: {
    question: "Das Rauschen hören",
    press: "Programm, dann Rauschen",
    what: (below) =>
      `Rauschen anstelle eines Programms, dann das Rauschen der Geräte allein, ${below} dB leiser, wie es hier wäre. Wer nichts hört, darf lauter drehen; danach bleibt es still, bis wieder leiser gedreht ist.`,
    tooSoft: (below) =>
      `Das Rauschen liegt ${below} dB unter dem Programm: zu leise, um es hier zu spielen. Wer das Programm gut hört, hört nichts davon.`,
    underSixteen:
      "Bei diesem Pegel trägt ein Ausgang mit 16 Bit es vielleicht nicht: Was dann zu hören ist, rauscht er selbst.",
    byEar: "In der Anlage: einen Regler drehen, in die Stille hören, ist es weniger?",
  },
  instead: {
    question: "Hilft ein anderer Kopfhörer oder ein stärkerer Verstärker?",
    how: (wanted) =>
      `Vom Rauschen bei ${wanted} dB bis zum Lautesten ohne abgeschnittene Spitzen, die Regler jeweils, wie es am besten ist.`,
    now: "wie es ist",
    bigger: (part) => `doppelte Spannung: ${part}`,
    worn: (ohms) => `übliche mit ${ohms} Ω`,
    reach: (most, hiss) => `bis ${most} dB, Rauschen ${hiss} dB`,
    short: (most, hiss, by) => `bis ${most} dB, ${by} zu wenig; Rauschen ${hiss} dB`,
  },
  tone: {
    same: (source, damping) =>
      `Davor liegen ${source} Ω (Dämpfungsfaktor ${damping}): Der Klang bleibt, wie er ist.`,
    little: (source, damping, by) =>
      `Davor liegen ${source} Ω (Dämpfungsfaktor ${damping}): Bei der Resonanz wird es um ${by} dB lauter, etwas mehr Bass.`,
    much: (source, damping, by) =>
      `Davor liegen ${source} Ω (Dämpfungsfaktor ${damping}): Bei der Resonanz wird es um ${by} dB lauter, ein dröhnender Bass.`,
    guessed: (peak) => `Angenommen sind ${peak} Ω, wo die Impedanz am höchsten ist.`,
  },
  time: {
    question: (long) => `Wie lange darf es dauern? Das Maß eines Tages reicht für: ${long}`,
    at: (level) =>
      `Bei ${level} dB die ganze Zeit, nach veröffentlichten Regeln, die je 3 dB mehr die Zeit halbieren:`,
    between: (low, high) => `${low} bis ${high}`,
    long: (hours, minutes) =>
      [hours > 0 ? `${hours} h` : "", minutes > 0 ? `${minutes} min` : ""]
        .filter(Boolean)
        .join(" "),
    under: "weniger als eine Minute",
    all: {
      day: "den ganzen Tag",
      week: "die ganze Woche",
      "children's week": "die ganze Woche",
    },
    rules: {
      day: "am Tag, nach 85 dB für acht Stunden (NIOSH 98-126, für die Arbeit)",
      week: "in der Woche, nach 80 dB für vierzig Stunden (WHO und ITU, H.870, für die Freizeit)",
      "children's week": "in der Woche für Kinder, nach 75 dB für vierzig Stunden (ebenda)",
    },
    tests: (level, share) =>
      `Die Prüfsignale, die in dieser Sitzung hier gehört wurden, waren höchstens ${level} dB laut, so wie die Regler stehen: ${share} vom Maß eines Tages.`,
    share: (hundredths) => `${hundredths} %`,
    underShare: "weniger als 0,1 %",
    noTests: "In dieser Sitzung wurde hier noch kein Prüfsignal beantwortet.",
    leftOut:
      "Nicht dabei: was an dem Tag sonst noch zu hören ist, einzelne laute Knalle, was der Kopfhörer am Klang ändert, und die Zahlen, die niemand eingetragen hat. Es ist gerechnet, nicht gemessen, und kein ärztlicher Rat.",
    stop: "Pfeifen oder dumpfes Hören ist ein Grund aufzuhören, und es untersuchen zu lassen, wenn es bleibt.",
  },
  oneMore: {
    question: "Noch jemand möchte mithören",
    how: "Jeweils mit dem, was es für die ändert, die schon hören, ohne dass jemand einen Regler anfasst, und dem Rauschen beim Neuen. Das Beste zuerst.",
    ways: {
      "free output": (place) => `aus einem freien Ausgang: ${place}`,
      "more outputs": (part) => `aus einem Gerät mit mehr Ausgängen anstelle von ${part}`,
      splitter: (place) => `mit einem Verteiler: ${place}`,
      "another amplifier": (place) => `aus einem weiteren Verstärker: ${place}`,
    },
    same: "niemand merkt es",
    softer: (by) => `für die anderen ${by} dB leiser`,
    louder: (by) => `für die anderen ${by} dB lauter`,
    hiss: (hiss) => `Rauschen ${hiss} dB`,
    short: (by) => `für den Neuen ${by} dB zu leise`,
    strained: "ein Ausgang hat dann zu viel zu treiben",
    lost: (effect) => `nicht das Ganze: ${effect}`,
    draw: "so zeichnen",
    none: "Hier ist für niemanden mehr Platz. Erst einen Verteiler oder einen Verstärker zeichnen.",
  },
  elsewhere: "An einem anderen Platz",
};
