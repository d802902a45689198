import type { Language } from "./language.ts";

/** Every sound: what it is, and what to hear or to read. */
export const signalWords: Language["signals"] = {
  "left-ident": { what: "Ein Klopfen links, zweimal", hear: "Nur im linken Ohr." },
  "right-ident": {
    what: "Zwei schnelle Klopfer rechts, zweimal",
    hear: "Nur im rechten Ohr, so laut wie das linke.",
  },
  "burst-pair": {
    what: "Zwei tiefe Rauschstöße: einer auf beiden Seiten gleich, einer rechts verpolt",
    hear: "Der erste in der Mitte des Kopfes, der zweite rundherum. Eine Mono-Summe verliert den zweiten, ein fehlender Rückleiter den ersten.",
  },
  silence: {
    what: "Nichts, anderthalb Sekunden lang",
    hear: "Nur Rauschen und Brummen der Kette; wer eine Seite hört, rät.",
  },
  "line-up": {
    what: "Pegelton: 1 kHz bei −18 dBFS auf beiden Kanälen, zehn Sekunden",
    hear: "Ein gleichmäßiger Ton. Er stellt Pegel von Gerät zu Gerät ein (EBU R68, ITU-R BS.645).",
  },
  "stereo-ident": {
    what: "Stereokennung: Pegelton, links alle drei Sekunden eine Viertelsekunde unterbrochen (EBU R49)",
    hear: "Die unterbrochene Seite ist links. In Mono sackt der Pegel ab; ist eine Ader verpolt, ist außer in den Pausen Stille.",
  },
  "line-ident": {
    what: "Zweikanal-Leitungskennung: alle vier Sekunden links eine Pause, dann rechts zwei",
    hear: "Eine Pause links, zwei rechts.",
  },
  "high-pair": {
    what: "Zwei hohe Rauschstöße: gleich, und rechts verpolt",
    hear: "Beide gleich: So hoch ist Polung nicht zu hören; was sich unterscheidet, ist der Pegel.",
  },
  "high-left": { what: "Ein hoher Rauschstoß links, zweimal", hear: "Nur im linken Ohr." },
  "high-right": {
    what: "Zwei hohe Rauschstöße rechts, zweimal",
    hear: "Nur im rechten Ohr, so hell wie das linke.",
  },
  "polarity-pulse": {
    what: "Eine Welle, die nach oben hoch und schmal ist, auf beiden Kanälen",
    hear: "Für Oszilloskop oder Messgerät: hoch nach oben ist richtig gepolt. Kein Ohr hört den Unterschied.",
  },
  "pink-noise": {
    what: "Rosa Rauschen: in jeder Oktave von 20 Hz bis 20 kHz gleich viel Leistung, beide Kanäle gleich",
    hear: "In der Mitte des Kopfes, weder dumpf noch scharf.",
  },
  "white-noise": {
    what: "Weißes Rauschen: in jedem Hertz von 20 Hz bis 20 kHz gleich viel Leistung, beide Kanäle gleich",
    hear: "In der Mitte des Kopfes; heller als rosa.",
  },
  "balance-tone": {
    what: "Rauschen mittlerer Lage, auf beiden Kanälen gleich",
    hear: "In der Mitte. Liegt es seitlich, ist diese Seite einige Dezibel lauter.",
  },
  rotation: {
    what: "Links, rechts, Mitte, immer rundum, je 300 ms",
    hear: "Was ausfällt, während ein Stecker oder Kabel bewegt wird.",
  },
  "buzz-search": {
    what: "Ein Ton, der von 30 auf 500 Hz gleitet und zurück",
    hear: "Ein glatter Ton: Was schnarrt oder klappert, verrät sich. Danach wieder leiser drehen.",
  },
  "seal-check": {
    what: "60 Hz, dann 500 Hz, mit gleichem Pegel, zweimal",
    hear: "Beide etwa gleich stark. Fehlt der tiefe, dichtet Muschel oder Aufsatz nicht ab.",
  },
  click: {
    what: "Ein Klick auf beiden Kanälen im selben Augenblick, jede halbe Sekunde",
    hear: "In der Mitte. Liegt er bei gleicher Lautstärke seitlich, ist die andere Seite verspätet.",
  },
  "hum-50": {
    what: "Netzbrummen von 50 Hz mit Obertönen",
    hear: "Klingt das Brummen in der Anlage so? Danach wieder leiser drehen.",
  },
  "hum-60": {
    what: "Netzbrummen von 60 Hz mit Obertönen",
    hear: "Klingt das Brummen in der Anlage so? Danach wieder leiser drehen.",
  },
  sweep: {
    what: "Ein exponentieller Sweep von 20 Hz bis 20 kHz in sechs Sekunden, beide Kanäle. Nicht für Ohren",
    hear: "Zum Aufnehmen: der Frequenzgang dessen, wo er hindurchging.",
  },
  multitone: {
    what: "Zwei Klicks, dann ein Kamm von Tönen auf jedem Kanal, dann die Kämme getauscht. Nicht für Ohren",
    hear: "Zum Aufnehmen: was jede Seite von jeder bekommt.",
  },
  "flex-tones": {
    what: "Zwei Töne links, zwei andere rechts. Nicht für Ohren",
    hear: "Zum Beobachten, während ein Kabel gebogen wird.",
  },
  staircase: {
    what: "1 kHz, jede Sekunde 3 dB lauter bis zur Vollaussteuerung. NIE AUF OHREN",
    hear: "Zum Ablesen: Bei welcher Stufe leuchtet die Übersteuerungsanzeige? Kopfhörer ab, alles dahinter stumm.",
  },
};
