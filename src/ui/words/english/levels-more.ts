/** What else follows from levels: the hiss as a sound, other gear, tone, time. */
export const levelsMore = {
  hear: {
    question: "Hear the hiss",
    press: "Programme, then hiss",
    what: (below: string) =>
      `Noise in place of a programme, then the hiss alone, ${below} dB lower, as it would be here. Turn up to hear it if you must; then it stays silent until you have turned down again.`,
    tooSoft: (below: string) =>
      `The hiss is ${below} dB below the programme: too soft to be played here. Whoever hears the programme well hears none of it.`,
    underSixteen:
      "At this level an output of 16 bits may not carry it: what you hear then is that output's own noise.",
    byEar: "In the rig: turn a knob, listen to the silence, is it less?",
  },
  instead: {
    question: "Would other headphones or a bigger amplifier help?",
    how: (wanted: string) =>
      `From the hiss at ${wanted} dB to the loudest with no peak cut, each with its knobs as they are best.`,
    now: "as it is",
    bigger: (part: string) => `twice the volts from ${part}`,
    worn: (ohms: string) => `usual ones of ${ohms} Ω`,
    reach: (most: string, hiss: string) => `up to ${most} dB, hiss ${hiss} dB`,
    short: (most: string, hiss: string, by: string) =>
      `up to ${most} dB, ${by} too little; hiss ${hiss} dB`,
  },
  tone: {
    same: (source: string, damping: string) =>
      `What feeds them has ${source} Ω (damping ${damping}): the tone stays as it is.`,
    little: (source: string, damping: string, by: string) =>
      `What feeds them has ${source} Ω (damping ${damping}): where they resonate it is ${by} dB louder, a little more bass.`,
    much: (source: string, damping: string, by: string) =>
      `What feeds them has ${source} Ω (damping ${damping}): where they resonate it is ${by} dB louder, a boomy bass.`,
    guessed: (peak: string) => `Taken is ${peak} Ω where their impedance is highest.`,
  },
  time: {
    question: (long: string) => `How long may it last? A day's measure takes ${long}`,
    at: (level: string) =>
      `At ${level} dB all the time, by published rules that halve the time for each 3 dB more:`,
    between: (low: string, high: string) => `${low} to ${high}`,
    long: (hours: number, minutes: number) =>
      [hours > 0 ? `${hours} h` : "", minutes > 0 ? `${minutes} min` : ""]
        .filter(Boolean)
        .join(" "),
    under: "less than a minute",
    all: {
      day: "all day",
      week: "all week",
      "children's week": "all week",
    },
    rules: {
      day: "a day, by 85 dB for eight hours (NIOSH 98-126, for work)",
      week: "a week, by 80 dB for forty hours (WHO and ITU, H.870, for leisure)",
      "children's week": "a week for children, by 75 dB for forty hours (the same)",
    },
    tests: (level: string, share: string) =>
      `The test signals heard here in this session were ${level} dB at most, as the knobs stand: ${share} of a day's measure.`,
    share: (hundredths: string) => `${hundredths} %`,
    underShare: "less than 0.1 %",
    noTests: "No test signal was answered here in this session.",
    leftOut:
      "Left out: whatever else is heard that day, single loud bangs, what the headphones do to the tone, the numbers that nobody typed. It is reckoned, not measured, and no medical advice.",
    stop: "Ringing or dull ears are a reason to stop, and to have them looked at if it stays.",
  },
  oneMore: {
    question: "One more wants to listen",
    how: "Each with what it does to who listens already, no knob touched, and the hiss of the newcomer. The best first.",
    ways: {
      "free output": (place: string) => `from a free output: ${place}`,
      "more outputs": (part: string) => `from a box with more outputs in place of ${part}`,
      splitter: (place: string) => `by a splitter: ${place}`,
      "another amplifier": (place: string) => `from another amplifier: ${place}`,
    },
    same: "nobody notices",
    softer: (by: string) => `${by} dB softer for who is there`,
    louder: (by: string) => `${by} dB louder for who is there`,
    hiss: (hiss: string) => `hiss ${hiss} dB`,
    short: (by: string) => `${by} dB too soft for the newcomer`,
    strained: "an output has too much to drive then",
    lost: (effect: string) => `not the whole of it: ${effect}`,
    draw: "draw it so",
    none: "Nothing here has room for one more. Draw a splitter or an amplifier first.",
  },
  elsewhere: "At another position",
};
