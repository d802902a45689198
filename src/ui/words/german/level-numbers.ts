import type { Words } from "#ui/words/use-words.ts";

export const levelNumbers: Words["levelNumbers"] = {
  close: "schließen",
  typeWhatYouKnow:
    "Eintragen, was bekannt ist; der Rest bleibt, wie er üblich ist. Ein geleertes Feld ist vergessen.",
  figures: {
    "most volts": "so viel gibt es höchstens",
    gain: "Verstärkung, Regler ganz auf",
    "input noise": "Rauschen vor dem Regler",
    "output noise": "Rauschen hinter dem Regler",
    "most input volts": "so viel verträgt der Eingang",
    sensitivity: "Kennschalldruck",
    ohms: "Impedanz jeder Seite",
    "output ohms": "Ausgangsimpedanz",
    "peak ohms": "höchste Impedanz, bei der Resonanz",
  },
  hints: {
    "most volts":
      "Wie im Datenblatt, von einer Ader: 4 V, +14 dBu, oder eine Leistung wie 80 mW an 32 Ω.",
    gain: "In Dezibel: 14.",
    "input noise": "Von 20 Hz bis 20 kHz: 4 µV oder −106 dBu.",
    "output noise": "Mit zugedrehtem Regler: 8 µV oder −100 dBu.",
    "most input volts": "4 V oder +14 dBu.",
    sensitivity: "Mit Einheit: 100 dB/mW oder 112 dB/V.",
    ohms: "In Ohm: 32.",
    "output ohms": "In Ohm: 10.",
    "peak ohms": "In Ohm: 60. Eine Kurve im Datenblatt zeigt sie, meist im Bass.",
  },
  usual: (typical, low, high, unit) =>
    `Üblich: ${typical} ${unit}; acht von zehn liegen zwischen ${low} und ${high}.`,
  thatIs: (value) => `Das sind ${value}.`,
  notUnderstood: (text, hint) => `»${text}« ist hier als Zahl nicht zu verstehen. ${hint}`,
  cannotBe: (value, least, most) =>
    `${value} kann nicht sein: Verstanden wird von ${least} bis ${most}.`,
  ofWhat: "Worauf das Datenblatt sie bezieht",
  units: {
    "dB/mW": "auf ein Milliwatt",
    "dB/V": "auf ein Volt",
    dB: "steht nicht da",
  },
  doubt: {
    less: (by) =>
      `Das Datenblatt sagt nicht, worauf. Angenommen ist ein Milliwatt; ist es ein Volt, sind es ${by} dB weniger.`,
    more: (by) =>
      `Das Datenblatt sagt nicht, worauf. Angenommen ist ein Milliwatt; ist es ein Volt, sind es ${by} dB mehr.`,
    notOfMilliwatt: (perVolt) =>
      `Auf ein Volt wären das ${perVolt} dB, was kaum ein Kopfhörer schafft: Vielleicht gilt die Zahl schon für ein Volt.`,
    notOfVolt: (perMilliwatt) =>
      `Auf ein Milliwatt wären das ${perMilliwatt} dB, also sehr wenig: Vielleicht gilt die Zahl für ein Milliwatt.`,
  },
};
