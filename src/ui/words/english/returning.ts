const sides = ["left", "right"] as const;
const alike = (sign: 1 | -1 | undefined): string => {
  if (sign === undefined) return "";
  return sign === 1 ? ", the same way up" : ", upside down";
};

/** What comes back through a lead: the steps of a measurement, and what it says. Sides are numbers, the left is 0. */
export const returning = {
  title: "Measure with a sound card",
  before: {
    good: "Put in a lead that is known to be good",
    any: "Put the lead in",
    hint: "Tones go out on both sides at once, quietly at first, and eleven seconds of what comes back say what each side does.",
    measureGood: "Measure the good one",
    measure: "Measure it",
    byHand: "I raise it by hand",
    against: "Against what",
    healthy: "against a healthy lead",
    healthyNote: "measured first, in the same place: every loss shows",
    asItComes: "as it comes",
    asItComesNote: "at once; what both sides lose together does not show",
  },
  byHand: {
    title: "Raise it until enough comes back",
    hint: "A step at a time: to 40 dB over what the input shows of itself, and never to its top.",
    measure: "Measure at this level",
    stop: "stop it",
  },
  measuring: { title: "Measuring", hint: "Leave the lead alone until it is done." },
  judging: "Working it out",
  swap: {
    good: {
      title: "Now the lead in question, in its place",
      hint: "The good one is measured, and it is silent. Take it out, put the other one in, and touch nothing else: no gain, no level.",
      anew: "another good one",
    },
    last: {
      title: "Now the next lead, in the same place",
      hint: "It is silent. Touch nothing else: no gain, no level.",
      anew: "begin anew",
    },
    measure: "Measure it",
  },
  told: {
    onceMore:
      "What it is cannot be told from this yet. Leave the lead in, touch nothing, and measure it once more.",
    same: "Measure the same once more",
    next: "Measure the next one",
    anew: "begin anew",
  },
  refused: {
    notHealthy: "That one is not healthy",
    title: "It cannot be judged so",
    again: "Measure again",
    back: "Back to the hook-up",
    asItComes: "measure it as it comes",
    nothingBack:
      "The signal is not there, or too deep in the noise. See that the lead is in at both ends and that the right output and input are chosen; else turn the input's gain up.",
    noMeasure: (why: string) =>
      `As a measure it will not do: ${why}. Take another lead that is known to be good, or see that both ends and both inputs are plugged as drawn.`,
    why: {
      "only one input was heard": "only one input was heard",
      "a side is missing": "a side is missing",
      "a side comes over on the other": "a side comes over on the other",
      "one side is upside down": "one side is upside down",
    },
    noWorker:
      "The part that works it out did not load, or there is too little memory. Close other pages and measure again.",
  },
  result: {
    oneInput: "Only one input was heard",
    matrixHint: "That is what ears would get of it, by its gains at 1 kHz.",
    oneInputHint: "What comes by the other one is not known: this is half of it.",
    againstHealthy: "Levels of left and right are against the healthy lead, over 100 Hz to 15 kHz.",
    asItComes:
      "As it comes: levels are against the strongest of what came, over 100 Hz to 15 kHz. What both sides lost together does not show.",
    oneStretch: "Only one of the signal's two stretches is there from end to end.",
    more: "Noise, hum, distortion, delay",
    sleeveElsewhere:
      "The sleeve: not tested, unless what played and what recorded had no ground in common but this lead.",
  },
  /** One side where it belongs. */
  side: {
    gone: (side: 0 | 1) => `${side === 0 ? "Left" : "Right"}: does not come back.`,
    told: (side: 0 | 1, level: string, polarity: string) =>
      `${side === 0 ? "Left" : "Right"}: ${level}, ${polarity}.`,
    even: "0.0 dB",
    down: (level: string) => `${level} down`,
    up: (level: string) => `${level} up`,
    unknown: "whether upside down cannot be told",
    asSent: "as sent",
    inverted: "upside down",
  },
  /** What comes over from a side into the input of the other. */
  over: {
    none: (from: 0 | 1, input: number, under: string) =>
      `Nothing of the ${sides[from]} in input ${input}, down to ${under} under the ${sides[from === 0 ? 1 : 0]}.`,
    asLoud: (from: 0 | 1, input: number, sign: 1 | -1 | undefined) =>
      `The ${sides[from]} comes over into input ${input}, as loud as the ${sides[from === 0 ? 1 : 0]}${alike(sign)}.`,
    under: (from: 0 | 1, input: number, under: string, sign: 1 | -1 | undefined) =>
      `The ${sides[from]} comes over into input ${input}, ${under} under the ${sides[from === 0 ? 1 : 0]}${alike(sign)}.`,
  },
  time: {
    same: "Both sides come at the same time.",
    late: (side: 0 | 1, by: string) => `The ${sides[side]} comes ${by} after the other side.`,
    round: (delay: string) =>
      `All round in ${delay} from the beginning of the recording, which is the computer's doing for the most part.`,
    clocksAlike: "The clocks of output and input differ by less than 0.1 parts in a million.",
    clocks: (by: string) => `The clocks of output and input differ by ${by} parts in a million.`,
  },
  beside: {
    line: (input: number, facts: readonly string[]) => `Input ${input}: ${facts.join("; ")}.`,
    noise: (level: string) => `noise ${level} dBFS`,
    noiseUnder: (level: string, under: string) => `noise ${level} dBFS, ${under} under the signal`,
    noHum: "no hum stands out of it",
    hum: (mains: number, worst: number, level: string) =>
      `hum of the mains (${mains} Hz), most at ${worst} Hz: ${level} dBFS`,
    distortion: (second: string, third: string) =>
      `distortion of second order ${second}, of third ${third}`,
    under: (percent: string) => `under ${percent} %`,
    percent: (percent: string) => `${percent} %`,
  },
  recording: {
    title: "A recording made elsewhere",
    how: "Play “multitone” out of the files to take away, and record what comes back as WAV, both channels, from before its first click until it is over. It stays on this device.",
    choose: "Choose a WAV, or drop it here",
    reading: "Reading the recording",
    share: (percent: number, name: string) => `${percent} % of ${name}`,
    failed: "It could not be read",
    failedWhy:
      "The part that reads recordings did not load, or there is too little memory. Close other pages and choose the file again.",
    cannot: (name: string) => `${name} cannot be read`,
    notIn: "Our signal is not in it",
    name: (name: string) => `${name}.`,
    playings: "Playings",
    at: (moment: string) => `at ${moment}`,
    channels: (channels: readonly number[]) =>
      `Left and right are channels ${channels.join(" and ")} of the file.`,
  },
};
