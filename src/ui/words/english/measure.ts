const quietly = "it starts quietly";
const cannotRecord =
  "This browser gives the page no input. Use another browser, or record elsewhere and bring the file.";

/** What all screens share that measure with an output and an input: the hook-up, its cautions, the level, and what goes wrong. */
export const measure = {
  where: {
    title: "Measured here, or recorded elsewhere?",
    label: "Where",
    here: "here: out of this computer, through the lead, and back in",
    hereNote: "any output and input with two sides; best an interface's own",
    cups: "headphones: each cup in turn at a microphone",
    cupsNote: "the one of this laptop or phone will do; wired headphones",
  },
  names: {
    inputs: "May the page see your inputs by name?",
    microphones: "May the page see your microphones by name?",
    willAsk:
      "The browser names inputs and outputs to a page that may use one. It will ask you, and calls every input a microphone; this one is closed again at once and nothing is recorded.",
    ask: "Ask for the names",
    again: "Ask again",
    without: "go on with the system's own",
    /** Why no inputs can be chosen from, and what to do. */
    refused: {
      "cannot record": cannotRecord,
      "not allowed":
        "The browser did not let the names be seen. Allow the microphone for this page in its settings (every input is called that there), and ask again.",
      "no input": "The browser names no input. Plug the interface in, and ask again.",
    },
  },
  ways: {
    lead: {
      title: "Out of which, and back into which?",
      hint: "Best both of one interface: then they have one clock.",
      back: "Back into which",
    },
    cups: {
      title: "Out of which, and which microphone?",
      hint: "Out to where the headphones are plugged. Any microphone will do that both cups reach.",
      back: "Which microphone",
    },
    out: "Out of which",
    outLabel: "Output",
    inLabel: "Input",
    goOn: "Go on",
    systemIn: "whatever the system records from",
    fromTo: (out: string, input: string) => `Out of ${out}, back into ${input}.`,
    heardBy: (out: string, input: string) => `Out of ${out}, heard by ${input}.`,
    others: "others",
  },
  loadBox: {
    before: "a load box stands before the inputs",
    why: "Why a load box",
    because:
      "An interface that feeds its own inputs has joined their grounds already: a lead whose sleeve is lost measures as whole. So the sleeve counts as not tested, unless its current has no other way back.",
    build:
      "To build one: two resistors of 33 Ω, 1 %. One from the far plug's tip, one from its ring, both to one point, and that point on nothing but the far plug's sleeve. Each resistor is read by a balanced input: hot on the tip or the ring, cold on the common point, the input's own ground on nothing.",
  },
  /** The drawing of it: what stands in it, and what it is for whoever does not see it. */
  picture: {
    out: (channel: number) => `out ${channel}`,
    in: (channel: number) => `in ${channel}`,
    plug: (number: number) => `plug ${number}`,
    each: "33 Ω each",
    joined: "An output's left and right, through the lead, back into an input's left and right",
    "load box":
      "An output's left and right, through the lead, into a load box, and from there into two inputs",
  },
  cautions: {
    off: "Headphones off and laid down: this is for instruments, and nobody listens to it.",
    nothingElse:
      "Nothing else on this output: PA, stream and recorder off it. Phantom power (48 V) off.",
    monitoring:
      "Direct monitoring off in the interface, or the input feeds the output and it howls.",
    quietly:
      "It starts quietly. The input is open, and its light on, only while it measures; nothing of it is kept.",
  },
  level: {
    title: "Finding the level",
    hint: "Hands off the lead. It goes up in slow steps until enough comes back.",
    stop: "Stop",
    nothingBack: "Nothing comes back yet.",
    input: (channel: number, level: string) => `in ${channel}: ${level}`,
    back: (inputs: readonly string[]) => `Comes back, ${inputs.join(", ")}.`,
    tooMuchBack: (inputs: readonly string[]) =>
      `Comes back, ${inputs.join(", ")}. Too much: the input is cut off at the top.`,
    tooMuch:
      "Even the softest is too much for this input: it is cut off at the top. Turn the input's gain down, or set it to line level, and start again.",
    left: (seconds: number) => `${seconds} s left`,
  },
  /** Why nothing is measured, and what to do. */
  trouble: {
    "no output":
      "There is no sound output with two sides. Plug one in or choose one in the system's settings, then start again.",
    suspended:
      "The browser holds the sound back. Start again; if that does not help, allow sound for this page in the browser.",
    lost: `The output or the input changed or stood still, so it was stopped. See that the right ones are chosen, then start again: ${quietly}.`,
    hidden: `The page was out of sight, so it was stopped. Start again when you are back: ${quietly}.`,
    gone: "The output or the input that was chosen has gone, so it was stopped. Plug it in again, or choose another.",
    "not that device":
      "The browser would not play to the output that was chosen. Choose it again, or let the system choose.",
    refused:
      "This sound did not pass the check that protects ears, so it was not played. Reload the page; if it comes back, do not use this copy.",
    "not loaded":
      "The part that plays or records did not load. Look at the connection and start again; if that does not help, reload the page. Nothing is lost.",
    "cannot record": cannotRecord,
    "not allowed":
      "The input was not allowed. Allow the microphone for this page in the browser's settings (every input is called that there), and in the system's, then start again.",
    "no input": "The browser finds no input. Plug the interface in, then start again.",
    busy: "Another program holds the input, or it does not answer. Close that program, then start again.",
    muted:
      "The input is switched off: by a key, in the system, or by another program. Switch it on, then start again.",
    changed: `The input has other channels than a moment ago. See how it is set, then start again: ${quietly}.`,
    "nothing came":
      "The input was opened, and not one sample came. Unplug the interface and plug it in again, or choose another input.",
  },
  /** What a browser may do to an input. */
  processing: {
    echoCancellation: "cancels echoes",
    noiseSuppression: "takes noise away",
    autoGainControl: "moves the level by itself",
  },
  processed: (by: readonly string[]) =>
    `The browser ${by.join(" and ")} on this input although it was asked not to: what comes in so is no measurement. Use another browser, or another input.`,
  granted: {
    system: "The system's own input",
    channels: (count: number) => `${count} ${count === 1 ? "channel" : "channels"}`,
    /** A rate that the browser made of another one. */
    madeOf: (rate: string, of: string) => `${rate} made of ${of}`,
    line: (device: string, facts: readonly string[]) => `${device}: ${facts.join(", ")}.`,
    unsaidLine: (device: string, facts: readonly string[]) =>
      `${device}: ${facts.join(", ")}; whether it is processed the browser does not say.`,
  },
};
