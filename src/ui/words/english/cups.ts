const sides = ["left", "right"] as const;
const gives = { left: "the left", right: "the right", both: "both", neither: "nothing" } as const;
type Gives = keyof typeof gives;
type Side = (typeof sides)[number];

/** Earcups held to a microphone, one after the other. Sides of a result are numbers, the left is 0. */
export const cups = {
  title: "Each cup in turn at a microphone",
  first: {
    hint: "First the left cup, then the right, flat against the microphone of this laptop or phone. Tones play for ten seconds each time, and it tells what each cup gives.",
    wired:
      "Wired headphones only: opening a microphone may turn a wireless headset mono, or send the sound to the output that calls use.",
    goOn: "They are wired: go on",
  },
  cautions: {
    off: "Headphones off the head: the tones are for instruments, and nobody listens to them.",
    nothingElse: "Nothing else on this output: PA, stream and recorder off it.",
    quietly:
      "It starts quietly and goes up in slow steps. The microphone is open, and its light on, only while it measures; nothing of it is kept.",
  },
  hold: {
    first: (side: Side) => `Hold the ${side} cup to the microphone`,
    second: (side: Side) => `Now hold the ${side} cup to the microphone`,
    firstHint:
      "The one marked so, wherever it sounds. Flat and close, as near as it will go, and the other cup turned away. Keep it still until it is done.",
    secondHint: (heard: Side) =>
      `The ${heard} one is heard, and it is silent. The same place and the same distance, and touch no level.`,
    listen: (side: Side) => `Listen to the ${side} cup`,
    anew: "begin anew",
  },
  work: {
    level: (side: Side) => `Finding the level: the ${side} cup`,
    listening: (side: Side) => `Listening: the ${side} cup`,
    levelHint: "Keep it still. It goes up in slow steps until the microphone hears enough.",
    listeningHint: "Keep it still, and the room quiet, until it is done.",
    judging: "Working it out",
  },
  refused: {
    title: (side: Side) => `The ${side} cup cannot be judged so`,
    orLevel: (other: Side) =>
      `Or find the level at this cup, which is the louder one, and then hold the ${other} one again.`,
    level: "Find the level at this cup",
    again: "Listen again",
    back: "back to the cup",
  },
  picture: {
    label: (held: Side) =>
      `The ${held} cup held to the microphone, the ${held === "left" ? "right" : "left"} one turned away`,
    microphone: "microphone",
    nothing: "nothing",
    sameWay: "same way",
    opposite: "opposite",
    notTold: "not told",
  },
  result: {
    refused: "It cannot be judged so",
    nothingHeard:
      "A microphone that hears nothing proves nothing: see that it is the right one and the right output, that nothing is turned down, and listen again.",
    enter: "Enter what it heard",
    both: "Listen to both again",
    notSettled: (open: readonly ("left" | "right" | "pair")[]) =>
      `Not settled by the microphone, and asked of ears afterwards: ${open
        .map((one) => (one === "pair" ? "the two bursts" : gives[one]))
        .join(", ")}.`,
  },
  /** What both cups are, as a heading. */
  heads: {
    neither: "Neither cup is heard",
    own: "Each side is in its own cup",
    ownAlike: "Each side is in its own cup, both the same way",
    ownOpposite: "Each side is in its own cup, one of them upside down",
    exchanged: "The sides are exchanged",
    mono: "Both cups give left and right together",
    bothLeft: "Both cups give the left",
    bothRight: "Both cups give the right",
    dead: (side: 0 | 1) => `The ${sides[side]} cup gives nothing`,
    each: (left: Gives, right: Gives) =>
      `The left cup gives ${gives[left]}, the right one ${gives[right]}`,
  },
  /** What one cup gives. */
  gives: {
    nothing: (side: 0 | 1) =>
      `The ${sides[side]} cup gives nothing: it is dead, or was not at the microphone.`,
    one: (side: 0 | 1, what: Side) => `The ${sides[side]} cup gives ${gives[what]}.`,
    both: (side: 0 | 1) =>
      `The ${sides[side]} cup gives left and right; how they add up cannot be told.`,
    sum: (side: 0 | 1) => `The ${sides[side]} cup gives left plus right.`,
    difference: (side: 0 | 1) => `The ${sides[side]} cup gives left minus right.`,
  },
  apart: {
    alike: "Both cups are equally loud.",
    byHand: (side: 0 | 1, by: string) =>
      `The ${sides[side]} cup is ${by} softer than the other one; how it is held makes as much.`,
    softer: (side: 0 | 1, by: string) =>
      `The ${sides[side]} cup is ${by} softer than the other one.`,
    leaks: (side: 0 | 1, by: string) =>
      `The ${sides[side]} cup is ${by} softer than the other one: it may be dead, and what is heard is what leaks from the other.`,
  },
  polarity: {
    unknown: "Whether they push the same way cannot be told: hold both alike, closer, and again.",
    alike:
      "They push the same way. A microphone's own polarity is unknown: only whether both are alike.",
    opposite:
      "They push opposite ways. A microphone's own polarity is unknown: only whether both are alike.",
  },
  buzz: {
    in: (percent: string, side: 0 | 1) => `${percent} in the ${sides[side]} cup`,
    none: (each: readonly string[]) => `Distortion (a buzz, a rattle): ${each.join(", ")}.`,
    one: (side: 0 | 1, each: readonly string[]) =>
      `The ${sides[side]} cup buzzes or rattles. Distortion: ${each.join(", ")}.`,
  },
};
