import { decimal } from "./german-numbers.ts";
import type { SheetWords } from "./sheet-words.ts";

/** The sheet that goes with the sounds as files. */
export const sheet: SheetWords = {
  title: (rate) => `Prüfsignale, ${rate} Hz, zwei Kanäle, 24 Bit`,
  cautions: [
    "Überall Lautstärke auf null, dann den Ton an, dann drehen alle selbst auf.",
    "PA, Stream und Aufnahme stumm vor dem ersten Ton.",
    "Leiser drehen, bevor eine Hand an Stecker, Kabel, Schalter oder Verstärker geht: Nach einer Reparatur kann es viel lauter sein.",
    "Dateien, deren Name mit „instruments“ beginnt, werden gemessen oder aufgenommen und nie auf Ohren gespielt. Die Treppe endet bei Vollaussteuerung.",
    "Klingelnde Ohren sind ein Grund aufzuhören.",
  ],
  levels:
    "Pegel sind 20 log10 des Effektivwerts eines Kanals; ein Abtastwert bei Vollaussteuerung ist 0.",
  level: (level) => (Number.isFinite(level) ? `${decimal(level, 1)} dBFS` : "keiner"),
  toHear: (hear) => `Zu hören: ${hear}`,
  facts: (duration, level, peak) =>
    `${decimal(duration, 2)} s; Pegel ${level} RMS, wo es klingt, Spitze ${peak}.`,
  loop: (from, to) => `Es lässt sich von Abtastwert ${from} bis ${to} in Schleife spielen.`,
};
