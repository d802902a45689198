import type { Words } from "#ui/words/use-words.ts";

export const board: Words["board"] = {
  noGear: "Ein Aufbau ohne Geräte: etwas daran ist falsch",
  toCheck: (positions) =>
    positions === 1 ? "Ein Platz zu prüfen" : `${positions} Plätze zu prüfen`,
  oneHealthy: "Er ist in Ordnung",
  allHealthy: (positions) => `Alle ${positions} sind in Ordnung`,
  someHealthy: (healthy, of) => `${healthy} von ${of} in Ordnung`,
  needYou: (positions) => (positions === 1 ? "einer braucht Sie" : `${positions} brauchen Sie`),
  trunkSound: (sure) => `nichts falsch an dem, was alle teilen: ${sure}`,
  theRig: "der Aufbau",
  leftOut: (entries) =>
    entries === 1
      ? "Eine Antwort oder Handlung betrifft, was nicht mehr gezeichnet ist, und zählt nicht mehr."
      : `${entries} Antworten oder Handlungen betreffen, was nicht mehr gezeichnet ist, und zählen nicht mehr.`,
};
