import type { Words } from "#ui/words/use-words.ts";

export const sounds: Words["sounds"] = {
  title: "Prüfsignale",
  hint: "Einmal drücken zum Anhören, noch einmal zum Anhalten.",
  toHear: (what, hear) => `${what}. Zu hören: ${hear}`,
  loop: "immer wieder",
  names: {
    "left-ident": "Kennung links",
    "right-ident": "Kennung rechts",
    "burst-pair": "Rauschpaar",
    silence: "Stille",
    "line-up": "Pegelton",
    "stereo-ident": "Stereokennung",
    "line-ident": "Leitungskennung",
    "high-pair": "Hochtonpaar",
    "high-left": "Hochton links",
    "high-right": "Hochton rechts",
    "polarity-pulse": "Polaritätsimpuls",
    "pink-noise": "Rosa Rauschen",
    "white-noise": "Weißes Rauschen",
    "balance-tone": "Balanceton",
    rotation: "Rundlauf",
    "buzz-search": "Schnarrsuche",
    "seal-check": "Sitz der In-Ears",
    click: "Klick",
    "hum-50": "Brumm 50",
    "hum-60": "Brumm 60",
  },
  takeAway: {
    title: "Zum Mitnehmen",
    what: "WAV-Dateien mit 24 Bit und ein Blatt, das sagt, was jede ist und was zu hören sein soll, für Player ohne Browser. Auch was nur für Messgeräte ist, gehört dazu; es steht dabei.",
    stop: "anhalten",
    save: (megabytes) => `Dateien speichern, ${megabytes} MB`,
    failed:
      "Die Dateien ließen sich nicht herstellen: zu wenig Speicher, oder ein Teil des Programms wurde nicht geladen. Andere Seiten schließen und noch einmal drücken.",
    make: "Dateien herstellen",
  },
  recording: {
    save: (megabytes) => `Aufnahme speichern, ${megabytes} MB`,
    failed: "Das ging nicht: noch einmal versuchen",
    keep: "diese Aufnahme behalten",
  },
  out: {
    title: "Wohin der Ton geht",
    hint: "Nichts ein- oder ausstecken, während es klingt: Ein anderer Ausgang beginnt wieder beim Startpegel.",
    again:
      "Vor dem Weitergehen noch einmal anhören: Ein offenes Mikrofon kann ein Funk-Headset auf einen Kanal schalten.",
    outputs: "Ausgang",
    channels: "Kanäle",
    pair: (first, second) => `Ausgang ${first} und ${second}`,
    says: (first, second) =>
      `Angesagt wird »Ausgang ${first} und ${second}«, dann »linke Seite« im linken und »rechte Seite« im rechten Ohr.`,
    hear: "Anhören, welcher es ist",
    another: "Ein anderer Ausgang?",
    willAsk:
      "Der Browser nennt die Ausgänge nur einer Seite, die das Mikrofon benutzen darf. Er fragt gleich; das Mikrofon wird sofort wieder geschlossen, aufgenommen wird nichts.",
    ask: "Den Browser nach den Namen fragen",
    askAgain: "Noch einmal fragen",
  },
  own: {
    knocks: "Klopfen und Rauschen",
    choose: "eigene Tondatei",
    reading: "Wird gelesen.",
    stays: "Die Datei bleibt auf diesem Gerät.",
    notes: {
      "first minute only": "Gespielt wird nur die erste Minute.",
      "first two channels only": "Gespielt werden nur die ersten zwei Kanäle.",
    },
    trouble: {
      "too big": "Diese Datei hat über 200 MB. Eine kürzere nehmen; eine Minute genügt.",
      unreadable:
        "Diese Datei ist nicht lesbar. Vielleicht wurde sie verschoben; noch einmal wählen.",
      "not a sound":
        "Der Browser findet in dieser Datei keinen Ton. Eine WAV-, MP3- oder andere Tondatei nehmen.",
      "not loaded":
        "Was Tondateien liest, wurde nicht geladen. Die Verbindung prüfen und noch einmal wählen.",
      "not finite": "In dieser Datei sind Samples kaputt. Eine andere nehmen.",
      "too short": "Dieser Ton ist kürzer als eine halbe Sekunde. Einen längeren nehmen.",
      silent: "In dieser Datei ist nichts zu hören. Eine andere nehmen.",
      "only clicks": "In dieser Datei sind nur Knackser. Eine andere nehmen.",
    },
  },
};
