import type { Words } from "#ui/words/use-words.ts";

const inTheSystem =
  "Am Rechner die Toneinstellungen des Systems öffnen, beim Lautsprecherzeichen, und dort den Ausgang wählen; Telefon und Tablet spielen auf dem, was zuletzt eingesteckt wurde. Dann zurückkommen und hören, welcher es ist.";

const noChoice: Words["sounding"]["noChoice"] = {
  "cannot choose": `Dieser Browser spielt dort, wo das System es will. ${inTheSystem}`,
  "not allowed": `Der Browser hat die Namen nicht freigegeben: Es gibt kein Mikrofon, oder es wurde nicht erlaubt. In den Einstellungen des Browsers für diese Seite erlauben und noch einmal fragen; oder im System wählen. ${inTheSystem}`,
  none: `Der Browser nennt keinen Ausgang außer dem des Systems. ${inTheSystem}`,
};

export const sounding: Words["sounding"] = {
  play: "Abspielen",
  again: "noch einmal",
  stop: "anhalten",
  handsOff: "Hände sind weg von den Geräten",
  volumeBack: "Die Lautstärke ist wieder unten",
  say: "ansagen: dahin zeigen, wo es zu hören ist",
  bursts: { first: "erstes", second: "zweites" },
  softer: "leiser",
  louder: "lauter",
  startsQuietly: "Es beginnt leise.",
  onePress: "Ein Druck sind 3 dB; für mehr gedrückt halten.",
  playsTo: (route) => `auf: ${route}`,
  system: "was das System gewählt hat",
  pair: (first, second, device) => `Ausgänge ${first} und ${second} von ${device}`,
  noChoice,
  soFar: (long) => `hier bisher ${long} Ton`,
  soFarLate: (long, late) => `hier bisher ${long} Ton, ${late} ms verspätet`,
  dose: (percent, cap) =>
    `${percent <= 1 ? "Unter 1 %" : `Bis zu ${percent} %`} vom Lärm eines Tages (85 dBA, 8 Stunden), mit empfindlichem Kopfhörer an 1 V; ein stärkerer Verstärker macht mehr daraus. Das Programm gibt nie mehr als ${cap} aus: die rote Linie.`,
  late: (late) =>
    `Der Ton ist ${late} ms nach dem Programm am Ohr, über Funk noch später; die Stille auch.`,
  emergency: "Im Notfall: Regler am Verstärker zu, oder absetzen.",
  cautions: {
    bench: "Der eigene gute Kopfhörer, L am linken Ohr, Lautstärke niedrig.",
    volumes: "Überall Lautstärke auf null, dann das Signal an; alle drehen selbst auf.",
    muted: "Sind PA, Stream und Aufnahme stumm?",
    outMuted:
      "Sind PA, Stream und Aufnahme stumm? An diesem Ausgang hängen vielleicht nicht nur Ohren.",
    outVolumes: "Überall Lautstärke auf null, dann den Ton an; alle drehen selbst auf.",
    own: "Der eigene gute Kopfhörer an diesem Gerät, L am linken Ohr, Lautstärke niedrig: nicht das Signal der Anlage.",
  },
  versions: {
    heard: "das ist zu hören",
    key: (key) => `Taste ${key}`,
    making: "der Ton wird vorbereitet",
    makingReady: "wird vorbereitet",
    stop: "anhalten",
    refused: "In diesem Ton ist nichts, was nah am Ohr gespielt werden darf. Einen anderen nehmen.",
  },
};
