import type { Words } from "#ui/words/use-words.ts";

export const planFacts: Words["planFacts"] = {
  level: {
    nothing: "Es kommt nichts an.",
    ears: (left, right) => `Linkes Ohr ${left}, rechtes Ohr ${right}.`,
    asGiven: "So laut, wie der Ausgang es hergibt.",
    quieter: (by) => `${by} leiser, als der Ausgang es hergibt.`,
    louder: (by) =>
      `${by} lauter, als der Ausgang es auf einer Ader hergibt, mit ebenso viel weniger Headroom.`,
  },
  places: {
    "all round": "ringsum, ohne Ort",
    nothing: "gar nicht",
    middle: "in der Mitte",
    "left ear": "im linken Ohr",
    "right ear": "im rechten Ohr",
  },
  pan: {
    nothing: "Pan bewirkt nichts.",
    allHeard: (place) => `Pan bewirkt nichts: zu hören ist alles ${place}.`,
    works: "Pan wirkt: links, Mitte und rechts sind dort, wo sie hingehören.",
    panned: (left, middle, right) =>
      `Zu hören, Pan links: ${left}. Pan Mitte: ${middle}. Pan rechts: ${right}.`,
  },
  strain: {
    none: "Für den Ausgang unbedenklich.",
    hard: (sockets, ohms) =>
      `Zu viel für ${sockets.map((name) => `»${name}«`).join(" und ")}: ${ohms} Last, das ist dort ein Kurzschluss.`,
  },
  quantity: {
    refused: (typed, least, most, stays) =>
      `»${typed}« ist unverständlich: eine Zahl von ${least} bis ${most}. Es bleibt bei ${stays}.`,
    usual: (value) => `üblich: ${value}`,
  },
};
