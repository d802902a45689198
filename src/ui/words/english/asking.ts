import type { Place } from "#core/listening/heard.ts";

/** What may be pointed at on the head, as it stands there. */
const spots: Readonly<Record<Place | "both cups", string>> = {
  "all round": "all round",
  "left ear": "left ear",
  "off to the left": "off to the left",
  middle: "middle",
  "off to the right": "off to the right",
  "right ear": "right ear",
  "both cups": "both cups",
};

/** Where everybody points whose feed is as it should be. */
const pointed: Readonly<Record<Place, string>> = {
  "left ear": "in the left ear",
  "right ear": "in the right ear",
  middle: "in the middle",
  "off to the left": "off to the left",
  "off to the right": "off to the right",
  "all round": "all round",
};

/** One question at a time: to ears, to eyes and to hands. */
export const asking = {
  spots,
  /** Read out before the letter that is drawn. */
  cupMarked: "cup marked ",
  cannotTell: "can't tell",
  faint: "there, but faint",
  changes: "not the same each time",
  silent: "nothing",
  otherTimes: (question: string) => `And at other times? ${question}`,
  benchCup: "Point at the ear it is in: the letter drawn there is the answer.",
  asHeard: "As the person wearing them hears it.",
  turnedUp: "Volume back down: it was turned up to listen for hiss or hum.",
  muted: "Muted: a hand was on the gear.",
  lowered: "It comes back 20 dB lower. Press louder, step by step, until it is as it was.",
  playThenPoint: "Play it, then point at where it was.",
  goTo: (there: string, here: string) =>
    `Go to ${there}: it tells what is shared from what is ${here}'s own.`,
  byMicrophone: "Let the microphone listen",
  byMicrophoneHow: ": each cup held to it in turn, instead of ears.",
  backToQuestion: "back to the question",
  balance: {
    hint: "The left and right arrow keys push it, a decibel at a time; whoever wears them says when.",
    middle: "It is in the middle",
    push: "push to the left or to the right",
    asItIs: "as it is",
    rightUp: (decibels: number) => `right up ${decibels} dB`,
    leftUp: (decibels: number) => `left up ${decibels} dB`,
  },
  twist: {
    question: "Twist it gently: does anything change?",
    what: (part: string) => `Twist the plug of ${part}.`,
    hint: "Gently, in its socket, not out of it. Press the lead at its neck too.",
    play: "Play while you twist",
    sound: "Left, right, middle, round and round: 20 dB lower, as a hand is on the gear.",
    bench: (noticed: string) => `You twist: ${noticed}.`,
  },
  look: {
    at: (place: string) => `Look at ${place}`,
    hint: "Touch nothing yet; say what you see.",
    bench: (seen: string) => `You look: ${seen}.`,
    meant: "Is it meant to be like that?",
    askClient: (client: string) => `Ask ${client}. A feed that was wanted so is no fault.`,
  },
  handsUp: {
    turn: (turn: number, of: number) => `All at once: sound ${turn} of ${of}`,
    tap: "Tap whoever points elsewhere",
    elsewhere: "elsewhere",
    play: "Play to all",
    stop: "stop here",
    question: "Who points elsewhere?",
    first:
      "All put them on, L on the left ear, and point where they hear it: an ear, the nose for the middle, a circle for all round.",
    point: "All point where they hear it.",
    pointed,
    one: (place: string) =>
      `As it should be: ${place}. Tap whoever points elsewhere or hears nothing.`,
    two: (first: string, second: string) =>
      `As it should be: first ${first}, then ${second}. Tap whoever points elsewhere or hears nothing.`,
    allSame: "All the same, on",
    on: "On",
    done: (same: number, all: boolean) =>
      all ? `Done: all ${same} the same` : `Done: ${same} the same`,
  },
};
