import type { Noise } from "#core/checks/noise.ts";

/** Where a noise comes in: what is asked, and what was found. */
export const noises = {
  link: "It hisses, hums, crackles or distorts",
  whereFrom: {
    hiss: "Where does the hiss come in?",
    hum: "Where does the hum come in?",
    crackle: "Where does the crackle come in?",
    distortion: "Where does the distortion come in?",
  } satisfies Readonly<Record<Noise, string>>,
  which: "Which of these is it?",
  programme: "programme",
  listen: {
    hiss: "Nothing plays from here. Leave every other knob as it stands.",
    hum: "Nothing plays from here. Leave every other knob as it stands.",
    crackle: "Let your own programme play as before, softly, and wait a little each time.",
    distortion: "Let your own programme play as loud as it was when it was rough, and no louder.",
  } satisfies Readonly<Record<Noise, string>>,
  onceMore: "Once more, to be sure.",
  putBack: "Put it back as it was before the next.",
  cannotTell: "can't tell",
  isGone: "It is gone now",
  soFar: "Where it may come in, so far",
  sure: (sure: string, odds: string) => `${sure}, ${odds}`,
  likeliest: (cause: string, odds: string) =>
    `Nothing left to try tells more. The likeliest: ${cause} (${odds}).`,
  helps: "What helps",
  mended: "Done, listen again",
  noticed: "What was noticed",
  what: "What that is",
  byEar: "Ask this seat by ear",
  other: "Another noise",
};
