import type { Words } from "#ui/words/use-words.ts";

export const board: Words["board"] = {
  noGear: "Ein Aufbau ohne Geräte: etwas daran ist falsch",
  toCheck: (positions) =>
    positions === 1 ? "Ein Platz zu prüfen" : `${positions} Plätze zu prüfen`,
  nobody: "Niemand ist da",
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
  states: {
    "not heard": "noch nicht gehört",
    begun: "angefangen",
    healthy: "in Ordnung",
    wrong: "etwas ist falsch",
    unsure: "nicht sicher",
    absent: "niemand da",
  },
  unsureYet: (words) => `noch nicht sicher: ${words}`,
  because: {
    "what all share is mended first": "erst kommt, was alle teilen",
    "it was begun": "hier wurde angefangen",
    "one seat tells of what all share": "ein Platz zeigt, was alle teilen",
    "all at once is quicker than walking": "alle auf einmal geht schneller als laufen",
    "it is the next": "das ist der nächste",
    "it is mended soonest": "das ist am schnellsten behoben",
  },
  anotherRig: "ein anderer Aufbau",
  allAtOnce: "Alle auf einmal, Hände hoch",
  listenAt: (seat) => `Hören: ${seat}`,
  goOnAt: (seat) => `Weitermachen: ${seat}`,
  whatIsWrongAt: (seat) => `Was ist falsch? ${seat}`,
  beforeTheyPart: "das liegt vor dem Verteilen auf die Plätze",
};
