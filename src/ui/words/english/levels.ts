import type { Room } from "#core/level/audible.ts";
import type { Loudness, Wanted } from "#core/level/heard.ts";
import { counted } from "#core/report/phrases.ts";

const loud: Readonly<Record<Loudness, string>> = {
  nothing: "nothing",
  "hardly there": "hardly there",
  soft: "soft",
  comfortable: "comfortable",
  loud: "loud",
  "too loud for long": "too loud for long",
  "far too loud": "far too loud",
};

const headline: Readonly<Record<Loudness, (level: string) => string>> = {
  nothing: () => "Nothing arrives at the ears",
  "hardly there": (level) => `Hardly there: ${level} dB at the ear`,
  soft: (level) => `Soft: ${level} dB at the ear`,
  comfortable: (level) => `Comfortable: ${level} dB at the ear`,
  loud: (level) => `Loud: ${level} dB at the ear`,
  "too loud for long": (level) => `Too loud for long: ${level} dB at the ear`,
  "far too loud": (level) => `Far too loud: ${level} dB at the ear`,
};

const hissIs: Readonly<Record<Room | "nowhere", string>> = {
  nowhere: "No hiss is heard, not even in a silent room.",
  silent: "Hiss is heard in a silent room only.",
  studio: "Hiss is heard where it is as quiet as in a studio.",
  "quiet room": "Hiss is heard in a quiet room, between the words.",
  "room with people": "Hiss is heard even in a room with people.",
  "stage before the show": "Hiss is heard everywhere, even on a stage before the show.",
};

const rooms: Readonly<Record<Room, string>> = {
  silent: "silence",
  studio: "a studio",
  "quiet room": "a quiet room",
  "room with people": "people around",
  "stage before the show": "a stage",
};

const coveredIn: Readonly<Record<Room, string>> = {
  silent: "not heard in a silent room",
  studio: "not heard in a studio",
  "quiet room": "not heard in a quiet room",
  "room with people": "not heard among people",
  "stage before the show": "not heard on a stage",
};

const wants: Readonly<Record<Wanted, (level: string) => string>> = {
  "quiet talk": (level) => `quiet talk, ${level} dB`,
  music: (level) => `music, ${level} dB`,
  "loud stage": (level) => `a loud stage, ${level} dB`,
};

/** How loud and how hissy it is at a position. */
export const levels = {
  link: "How loud, how much hiss",
  nothingFed: "Nothing is fed here, or an instrument stands where ears would be.",
  headline,
  loud,
  hissIs,
  hissHeard: "hiss, heard",
  hissUnheard: "hiss, not heard",
  hissAt: (level: string) => `Hiss is ${level} dB at the ear.`,
  coveredIn,
  rooms,
  wants,
  between: (low: string, high: string, unknown: number) =>
    `It may be ${low} to ${high} dB: ${counted(unknown, "number is", "numbers are")} taken as usual. Tap a box to type what its sheet says.`,
  noticed: (times: number) =>
    `The hiss is reckoned from what you noticed of it, too: ${counted(times, "answer", "answers")}.`,
  cutAt: (part: string, by: string) =>
    `${part} cuts the peaks off, by ${by} dB: turn down what comes before`,
  chain: "from the source to the ears",
  lines: {
    programme: "programme",
    peaks: "its peaks",
    noise: "noise",
    ceiling: "clips above",
    volts: "dBu",
    pressure: "dB SPL",
  },
  cut: (by: string) => `cut off here, ${by} dB`,
  place: {
    input: (level: string, noise: string, room: string) =>
      `At its input the programme is ${level} dBu, noise ${noise} dBu, ${room} dB below clipping with its peaks.`,
    output: (level: string, noise: string, room: string) =>
      `At its output the programme is ${level} dBu, noise ${noise} dBu, ${room} dB below clipping with its peaks.`,
  },
  numbersOf: (part: string) => `numbers of ${part}`,
  noKnob: "no knob",
  knobOf: (part: string) => `knob of ${part}`,
  knobSays: (up: string, down: string, level: string) =>
    `${up} of 10, ${down} dB; ${level} dB at the ear`,
  knobAt: (up: string) => `at ${up}`,
  knobTo: (up: string) => `to ${up}`,
  knobGuessed: "taken as half way",
  wanted: "How loud it should be:",
  where: "Where it is listened:",
  setSo: "Set the knobs so",
  setAlready: "The knobs stand so",
  whatThen: (level: string, now: string, then: string) =>
    `Then it is ${level} dB at the ear. Hiss: now ${now} dB, then ${then}.`,
  byThumb: (hiss: string) =>
    `Reckoned with what is usual, as no number of these boxes was typed. The rule of thumb where nothing is known, the first knob about half and the amplifier makes up, comes to a hiss of ${hiss} dB here.`,
  setByThumb: "set them by the rule of thumb",
  byNumbers:
    "As the numbers have it: every knob from the first on as high as stays clean, and the last makes up. That is where hiss is least.",
  short: (by: string) => `So loud it cannot be without cutting peaks off: ${by} dB are missing.`,
};
