import { sentence } from "#core/report/phrases.ts";
import type { Words } from "#ui/words/use-words.ts";

export const prove: Words["prove"] = {
  you: "Sie",
  betweenGood: (lead) => `${lead}, zwischen Geräten, die sicher in Ordnung sind`,
  choice: {
    one: {
      title: "Was ist an einem Ende?",
      hint: "Kabel überall abziehen und auf das Ende in der Hand zeigen. Klinke kann 6,3 oder 3,5 mm sein.",
      label: "ein Ende",
    },
    other: {
      title: "Und am anderen Ende?",
      hint: "Auf das zeigen, was so aussieht.",
      label: "das andere Ende",
    },
    ends: (one, other) => `${one} auf ${other}`,
    kind: "Was soll es sein?",
    kindHint: "Kontakt für Kontakt, wie es gedacht ist.",
    kindLabel: "was es sein soll",
    unknown: { name: "herausfinden, was es ist", note: "Mit dem Multimeter, Messung für Messung." },
  },
  ends: {
    TRS: { name: "Stereoklinke", note: "drei Kontakte: zwei schwarze Ringe (TRS)" },
    TS: { name: "Monoklinke", note: "zwei Kontakte: ein schwarzer Ring (TS)" },
    XLR: { name: "XLR", note: "drei Stifte oder drei Löcher" },
    "two TS": { name: "zwei Monoklinken", note: "links und rechts (TS)" },
    "two TRS": { name: "zwei Klinken mit drei Kontakten", note: "links und rechts (TRS)" },
    "two RCA": { name: "zwei Cinch", note: "Rot ist rechts" },
    "two XLR": { name: "zwei XLR", note: "links und rechts" },
    "TRS socket": { name: "Klinkenkupplung", note: "hier passt ein Stecker hinein" },
  },
  how: {
    title: "Wie soll geprüft werden?",
    label: "Prüfverfahren",
    cannotSee: (names, more) =>
      `Zeigt nicht: ${names.join("; ")}${more > 0 ? `; und ${more} weitere` : ""}.`,
  },
  methods: {
    return: {
      name: "zurück ins Interface",
      note: "Aus den Ausgängen durch das Kabel in die Line-Eingänge. Eine halbe Minute.",
    },
    "load box": {
      name: "über eine Lastbox",
      note: "Aus den Ausgängen in zwei Widerstände, von dort in die Line-Eingänge. Eine halbe Minute.",
    },
    ear: {
      name: "nach Gehör",
      note: "Zwischen Geräten und Kopfhörern, die sicher in Ordnung sind. Drei oder vier Töne.",
    },
    meter: {
      name: "mit dem Multimeter",
      note: "Kontakt für Kontakt, an beiden Enden abgezogen. Messung für Messung.",
    },
  },
  unseen: {
    whether: (fault) => `ob: ${fault}`,
    capacitance: "Kapazität",
    wire: (one, other) => `${one} auf ${other}`,
    dirt: (ohms) => `Übergangswiderstand bis ${ohms} Ω`,
  },
  meter: {
    unknown: "ein unbekanntes Kabel",
    touch: (one, other) => `Messen: ${one} und ${other}.`,
    drawn: (one, other) => `Eine Messspitze an ${one}, die andere an ${other}.`,
    again: "Noch einmal, zur Sicherheit.",
    bend: "Beide Messspitzen halten und das Kabel der Länge nach und an den Steckern biegen.",
    mayLie: "Dafür darf das Kabel still liegen.",
    apart: "Diese beiden sollen keine Verbindung haben.",
    left: (count) =>
      `Noch ${count === 1 ? "eine Messung" : `${count} Messungen`}, wenn alles in Ordnung ist; sonst mehr.`,
    moreToTell:
      "Es ist nicht das, wonach es aussah, oder etwas daran ist falsch: noch ein paar Messungen.",
    moreOfWrong: "Etwas ist nicht, wie es sein soll: noch ein paar Messungen zeigen, was.",
    cautions: {
      out: "Kabel an beiden Enden abziehen. Nie messen, solange jemand trägt, was daran hängt: Ein Multimeter knackt mit 85 dB im Ohr.",
      ohms: "Kleinster Ohm-Bereich, mit Piepton, wenn es einen gibt. Zuerst die Messspitzen aneinanderhalten: Was dann steht, ist das Multimeter selbst.",
      alike: "Beide Enden sehen gleich aus: ein Stück Tape auf eines davon, mit A beschriftet.",
      brief: "An beiden Enden abgezogen; nie, solange es jemand trägt.",
    },
    shows: "Was zeigt das Multimeter?",
    beep: ["Piepton", "nahe 0 Ω"],
    noBeep: ["kein Piepton", "offen"],
    changes: ["es wechselt", "beim Biegen"],
    about: (ohms) => `etwa ${ohms}`,
    typed: "oder der Messwert, in Ω",
    enter: "eingeben",
    refused: (text) =>
      `»${text}« ist unverständlich: eine Zahl in Ohm, etwa 0,4 oder 12 oder 1,2k. Wo das Multimeter OL oder nur 1 zeigt, auf »kein Piepton« zeigen.`,
    last: (one, other, shown) => sentence(`${one} und ${other}: ${shown}`),
    takeBack: "letzte Messung zurücknehmen",
    shownBeep: "Piepton, nahe 0 Ω",
    shownOpen: "kein Piepton, offen",
    comesAndGoes: (shown) => `${shown}, mit Wackelkontakt`,
  },
  contactAt: (contact, end) => (/\d$/.test(contact) ? `${contact} (${end})` : `${contact} ${end}`),
  end: (letter, mark) => (mark === undefined ? letter : `${letter} ${mark}`),
  result: {
    asItShould: "In Ordnung",
    itIs: (lead) => `Es ist: ${lead}. Alles in Ordnung.`,
    unsure: "Nicht sicher.",
    faults: (faults) => sentence(faults.join(", und ")),
    sure: (sure, odds) => sentence(`${sure}, ${odds}`),
    nothingFound: (sure, odds) =>
      `Kein Fehler gefunden, einiges wurde nicht geprüft: ${sure}, ${odds}.`,
    likeliest: (faults, sure, odds) =>
      `Mehr zeigt dieses Verfahren nicht. Am wahrscheinlichsten: ${faults.join(", und ")} (${sure}, ${odds}).`,
    cannotSee: "Was dieses Verfahren nicht zeigt",
    notTested: (name) => `${name}: nicht geprüft`,
    cancelling: "zwei Fehler, die sich gegenseitig aufheben",
    whatNow: "Was nun",
    toMend: "Reparatur",
    cautions: [
      "Überall abziehen, an beiden Enden, bevor es geöffnet wird.",
      "Frische Luft und Augenschutz; Zinn spritzt, und der Kolben bleibt heiß.",
    ],
    byMeter: "Mit dem Multimeter klären",
    checkAgain: "Noch einmal prüfen",
    doneCheckAgain: "Erledigt, noch einmal prüfen",
    tellAnother: "Noch eines mit diesen Enden bestimmen",
    another: "Noch ein Kabel dieser Art",
    otherWay: "Anders prüfen",
    alike: "Davon hier nicht zu unterscheiden",
    mayBe: "Es könnte auch sein",
    candidate: (kind, odds) => `${kind} (${odds})`,
    candidateWith: (kind, fault, odds) => `${kind}, Fehler: ${fault} (${odds})`,
    returnOpen: "Der Rückleiter ist unterbrochen.",
    returnGood: (error) => `Der Rückleiter misst sich, wie er soll, ± ${error}.`,
    returnMore: (ohms, error) =>
      `Der Rückleiter hat ${ohms} mehr, als er haben sollte, ± ${error}.`,
    meant: "verdrahtet wie gedacht",
    asMeant: "wie es gedacht ist",
    asItIs: "wie es wahrscheinlich ist",
    itIsNow: (faults) => `wie es ist: ${faults.join(", ")}`,
    stopped:
      "Gemessen wird nur, bis es sich lohnt, das Kabel zu öffnen; nach der Reparatur noch einmal prüfen.",
    dotted: "Gepunktet: nicht gemessen.",
  },
};
