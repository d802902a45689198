/** What is foreseen of level, pan, hum and strain. */
export const planFacts = {
  level: {
    nothing: "Nothing arrives.",
    ears: (left: string, right: string) => `Left ear ${left}, right ear ${right}.`,
    asGiven: "As loud as the output gives it.",
    quieter: (by: string) => `${by} quieter than the output gives it.`,
    louder: (by: string) =>
      `${by} louder than the output gives it on one leg, with as much less headroom.`,
  },
  /** Where something that is panned is heard: after 'is heard', and after 'left:'. */
  places: {
    "all round": "all round, in no place",
    nothing: "not heard at all",
    middle: "in the middle",
    "left ear": "in the left ear",
    "right ear": "in the right ear",
  },
  pan: {
    nothing: "Pan does nothing.",
    allHeard: (place: string) => `Pan does nothing: all is heard ${place}.`,
    works: "Pan works: left, middle and right are where they belong.",
    panned: (left: string, middle: string, right: string) =>
      `Panned left: ${left}. Middle: ${middle}. Right: ${right}.`,
  },
  strain: {
    none: "Easy on the output.",
    hard: (sockets: readonly string[], ohms: string) =>
      `Hard on ${sockets.join(" and ")}: it drives ${ohms}, which is a short to it.`,
  },
  quantity: {
    refused: (typed: string, least: string, most: string, stays: string) =>
      `'${typed}' is not understood: a number from ${least} to ${most}. It stays at ${stays}.`,
    usual: (value: string) => `usual: ${value}`,
  },
};
