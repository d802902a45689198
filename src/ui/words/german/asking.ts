import type { Words } from "#ui/words/use-words.ts";

const handsUp: Words["asking"]["handsUp"] = {
  turn: (turn, of) => `Alle auf einmal: Ton ${turn} von ${of}`,
  tap: "Antippen, wer woandershin zeigt",
  elsewhere: "woanders",
  play: "Für alle abspielen",
  stop: "hier aufhören",
  question: "Wer zeigt woandershin?",
  first:
    "Alle setzen auf, L am linken Ohr, und zeigen, wo sie es hören: ein Ohr, die Nase für die Mitte, ein Kreis für rundherum.",
  point: "Alle zeigen, wo sie es hören.",
  pointed: {
    "left ear": "im linken Ohr",
    "right ear": "im rechten Ohr",
    middle: "in der Mitte",
    "off to the left": "links von der Mitte",
    "off to the right": "rechts von der Mitte",
    "all round": "rundherum",
  },
  one: (place) => `Richtig ist: ${place}. Antippen, wer woandershin zeigt oder nichts hört.`,
  two: (first, second) =>
    `Richtig ist: erst ${first}, dann ${second}. Antippen, wer woandershin zeigt oder nichts hört.`,
  allSame: "Alle gleich, weiter",
  on: "Weiter",
  done: (same, all) => (all ? `Fertig: alle ${same} gleich` : `Fertig: ${same} gleich`),
};

export const asking: Words["asking"] = {
  spots: {
    "all round": "rundherum",
    "left ear": "ganz links",
    "off to the left": "etwas links",
    middle: "Mitte",
    "off to the right": "etwas rechts",
    "right ear": "ganz rechts",
    "both cups": "beide Muscheln",
  },
  cupMarked: "Muschel mit ",
  cannotTell: "weiß nicht",
  faint: "da, aber schwach",
  changes: "nicht jedes Mal gleich",
  silent: "nichts",
  otherTimes: (question) => `Und die anderen Male? ${question}`,
  benchCup: "Auf das Ohr zeigen, in dem es ist: Der Buchstabe dort ist die Antwort.",
  asHeard: "So, wie es hört, wer den Kopfhörer trägt.",
  turnedUp: "Wieder leiser drehen: Für Rauschen oder Brummen wurde aufgedreht.",
  muted: "Stumm: Eine Hand war an den Geräten.",
  lowered: "Es kommt 20 dB leiser zurück. Schrittweise lauter, bis es ist wie vorher.",
  playThenPoint: "Abspielen, dann zeigen, wo es war.",
  goTo: (there, here) =>
    `Zu ${there} gehen: Das trennt, was alle teilen, von dem, was nur ${here} betrifft.`,
  byMicrophone: "Das Mikrofon hören lassen",
  byMicrophoneHow: ": statt der Ohren, jede Muschel einmal davor gehalten.",
  backToQuestion: "zurück zur Frage",
  balance: {
    hint: "Die Pfeiltasten links und rechts schieben um je ein Dezibel; wer den Kopfhörer trägt, sagt, wann es stimmt.",
    middle: "Es ist in der Mitte",
    push: "nach links oder rechts schieben",
    asItIs: "so, wie es ist",
    rightUp: (decibels) => `rechts ${decibels} dB lauter`,
    leftUp: (decibels) => `links ${decibels} dB lauter`,
  },
  twist: {
    question: "Vorsichtig drehen: Ändert sich etwas?",
    what: (part) => `Den Stecker von ${part} drehen.`,
    hint: "Vorsichtig, in der Buchse, nicht herausziehen. Auch auf das Kabel am Knickschutz drücken.",
    play: "Beim Drehen abspielen",
    sound:
      "Links, rechts, Mitte, immer rundum: 20 dB leiser, solange eine Hand an den Geräten ist.",
    bench: (noticed) => `Beim Drehen: ${noticed}.`,
  },
  look: {
    at: (place) => `Nachsehen: ${place}`,
    hint: "Noch nichts anfassen; sagen, was zu sehen ist.",
    bench: (seen) => `Zu sehen ist: ${seen}.`,
    meant: "Soll das so sein?",
    askClient: (client) => `Fragen: ${client}. Was so gewollt ist, ist kein Fehler.`,
  },
  handsUp,
};
