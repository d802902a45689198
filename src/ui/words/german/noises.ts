import type { Words } from "#ui/words/use-words.ts";

/** Where a noise comes in, in German. */
export const noises: Words["noises"] = {
  link: "Es rauscht, brummt, knistert oder verzerrt",
  whereFrom: {
    hiss: "Wo kommt das Rauschen herein?",
    hum: "Wo kommt das Brummen herein?",
    crackle: "Wo kommt das Knistern herein?",
    distortion: "Wo kommt die Verzerrung herein?",
  },
  which: "Was davon ist es?",
  programme: "Programm",
  listen: {
    hiss: "Von hier läuft nichts. Alle anderen Regler bleiben, wie sie stehen.",
    hum: "Von hier läuft nichts. Alle anderen Regler bleiben, wie sie stehen.",
    crackle: "Das eigene Programm leise weiterlaufen lassen, und jedes Mal ein wenig warten.",
    distortion: "Das eigene Programm so laut laufen lassen, wie es rau war, und nicht lauter.",
  },
  onceMore: "Noch einmal, um sicherzugehen.",
  putBack: "Vor dem nächsten Schritt wieder so herstellen, wie es war.",
  cannotTell: "weiß nicht",
  isGone: "Es ist jetzt weg",
  soFar: "Wo es bisher herkommen kann",
  sure: (sure, odds) => `${sure}, ${odds}`,
  likeliest: (cause, odds) =>
    `Kein weiterer Versuch sagt mehr. Am wahrscheinlichsten: ${cause} (${odds}).`,
  helps: "Was hilft",
  mended: "Erledigt, noch einmal hören",
  noticed: "Was zu hören war",
  what: "Was das ist",
  byEar: "Diesen Platz nach Gehör prüfen",
  other: "Ein anderes Geräusch",
};
