import type { Words } from "#ui/words/use-words.ts";

type Side = "left" | "right";
const the = { left: "die linke", right: "die rechte" } as const;
const The = ["Die linke Muschel", "Die rechte Muschel"] as const;
const gives = { left: "links", right: "rechts", both: "beides", neither: "nichts" } as const;
const other = (side: Side): Side => (side === "left" ? "right" : "left");

export const cups: Words["cups"] = {
  title: "Eine Muschel nach der anderen ans Mikrofon",
  first: {
    hint: "Zuerst die linke Muschel, dann die rechte, flach ans Mikrofon von Laptop oder Telefon. Jedes Mal laufen zehn Sekunden lang Töne; danach steht da, was jede Muschel gibt.",
    wired:
      "Nur Kopfhörer mit Kabel: Ein offenes Mikrofon kann ein Funk-Headset auf Mono schalten oder den Ton auf den Ausgang für Anrufe legen.",
    goOn: "Mit Kabel: weiter",
  },
  cautions: {
    off: "Kopfhörer abnehmen: Die Töne sind für Messgeräte, niemand hört zu.",
    nothingElse: "Sonst nichts an diesem Ausgang: PA, Stream und Aufnahme weg davon.",
    quietly:
      "Es beginnt leise und geht in langsamen Stufen hinauf. Das Mikrofon ist nur während der Messung offen, nur dann leuchtet sein Licht; aufgehoben wird nichts.",
  },
  hold: {
    first: (side) => `${side === "left" ? "Die linke" : "Die rechte"} Muschel ans Mikrofon halten`,
    second: (side) => `Jetzt ${the[side]} Muschel ans Mikrofon halten`,
    firstHint:
      "Die so beschriftete, egal wo es klingt. Flach und so nah wie möglich, die andere Muschel abgewandt. Stillhalten, bis es fertig ist.",
    secondHint: (heard) =>
      `${heard === "left" ? "Die linke" : "Die rechte"} ist gehört, und es ist still. Dieselbe Stelle, derselbe Abstand, und keinen Pegel anfassen.`,
    listen: (side) => `${side === "left" ? "Linke" : "Rechte"} Muschel hören`,
    anew: "von vorn",
  },
  work: {
    level: (side) => `Der Pegel wird gesucht: ${the[side]} Muschel`,
    listening: (side) => `Das Mikrofon hört zu: ${the[side]} Muschel`,
    levelHint: "Stillhalten. Es geht in langsamen Stufen hinauf, bis das Mikrofon genug hört.",
    listeningHint: "Stillhalten, und Ruhe im Raum, bis es fertig ist.",
    judging: "Wird ausgewertet",
  },
  refused: {
    title: (side) =>
      `${side === "left" ? "Die linke" : "Die rechte"} Muschel ist so nicht zu beurteilen`,
    orLevel: (side) =>
      `Oder den Pegel an dieser Muschel suchen, der lauteren, und danach ${the[side]} noch einmal hinhalten.`,
    level: "Pegel an dieser Muschel suchen",
    again: "Noch einmal hören",
    back: "zurück zur Muschel",
  },
  picture: {
    label: (held) =>
      `${held === "left" ? "Die linke" : "Die rechte"} Muschel am Mikrofon, ${the[other(held)]} abgewandt`,
    microphone: "Mikrofon",
    nothing: "nichts",
    sameWay: "gleich gepolt",
    opposite: "gegenpolig",
    notTold: "unklar",
  },
  result: {
    refused: "So ist es nicht zu beurteilen",
    nothingHeard:
      "Ein Mikrofon, das nichts hört, beweist nichts: Nachsehen, ob es das richtige ist und der Ausgang auch, ob nichts zugedreht ist, und noch einmal hören.",
    enter: "Eintragen, was es gehört hat",
    both: "Beide noch einmal hören",
    notSettled: (open) =>
      `Vom Mikrofon nicht geklärt, danach die Ohren fragen: ${open
        .map((one) => (one === "pair" ? "die zwei Rauschstöße" : gives[one]))
        .join(", ")}.`,
  },
  heads: {
    neither: "Keine Muschel ist zu hören",
    own: "Jede Seite ist in ihrer Muschel",
    ownAlike: "Jede Seite ist in ihrer Muschel, beide gleich gepolt",
    ownOpposite: "Jede Seite ist in ihrer Muschel, eine davon verpolt",
    exchanged: "Die Seiten sind vertauscht",
    mono: "Beide Muscheln geben links und rechts zusammen",
    bothLeft: "Beide Muscheln geben links",
    bothRight: "Beide Muscheln geben rechts",
    dead: (side) => `${The[side]} gibt nichts`,
    each: (left, right) => `Die linke Muschel gibt ${gives[left]}, die rechte ${gives[right]}`,
  },
  gives: {
    nothing: (side) => `${The[side]} gibt nichts: Sie ist tot oder war nicht am Mikrofon.`,
    one: (side, what) => `${The[side]} gibt ${gives[what]}.`,
    both: (side) =>
      `${The[side]} gibt links und rechts; wie sie sich addieren, ist nicht festzustellen.`,
    sum: (side) => `${The[side]} gibt links plus rechts.`,
    difference: (side) => `${The[side]} gibt links minus rechts.`,
  },
  apart: {
    alike: "Beide Muscheln sind gleich laut.",
    byHand: (side, by) =>
      `${The[side]} ist ${by} leiser als die andere; so viel macht schon das Hinhalten aus.`,
    softer: (side, by) => `${The[side]} ist ${by} leiser als die andere.`,
    leaks: (side, by) =>
      `${The[side]} ist ${by} leiser als die andere: Vielleicht ist sie tot, und zu hören ist nur, was von der anderen herüberdringt.`,
  },
  polarity: {
    unknown:
      "Ob sie gleich gepolt sind, ist nicht festzustellen: beide gleich hinhalten, näher, und noch einmal.",
    alike:
      "Beide sind gleich gepolt. Die Polung des Mikrofons selbst ist unbekannt: nur, ob beide gleich sind.",
    opposite:
      "Sie sind gegeneinander verpolt. Die Polung des Mikrofons selbst ist unbekannt: nur, ob beide gleich sind.",
  },
  buzz: {
    in: (percent, side) => `${percent} in der ${side === 0 ? "linken" : "rechten"} Muschel`,
    none: (each) => `Klirr (Schnarren, Rasseln): ${each.join(", ")}.`,
    one: (side, each) => `${The[side]} schnarrt oder rasselt. Klirr: ${each.join(", ")}.`,
  },
};
