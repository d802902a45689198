import { answersIn, remediesIn } from "./english-noises-help.ts";
import { listed, type NoiseWords } from "./noise-words.ts";

const sound = {
  hiss: "the hiss",
  hum: "the hum",
  crackle: "the crackle",
  distortion: "the distortion",
} as const;

/** What is said of noises, in English. What they are and what helps: common practice, no source. */
export const noiseWords: NoiseWords = {
  named: { hiss: "hiss", hum: "hum", crackle: "crackle", distortion: "distortion" },
  sounds: {
    hiss: "a steady rush, also while nothing plays",
    hum: "a low tone or a buzz, as of a transformer",
    crackle: "cracks and scratches, or short gaps",
    distortion: "rough or torn, most of all where it is loud",
  },
  trials: {
    "programme stopped": () => "Stop what plays, mute the microphones, and listen to the silence.",
    "knob down": (where, noise) =>
      noise === "distortion"
        ? `Turn the knob of ${where} down by about a third, until it is clearly softer.`
        : `Turn the knob of ${where} all the way down, and listen.`,
    "knob to and fro": (where) =>
      `Volume low first. Turn the knob of ${where} slowly to and fro, a few times.`,
    "feed out": (where) =>
      `Volume down first. Pull the lead out of the input of ${where}, then turn slowly back up.`,
    "on battery": (where) =>
      `Pull the power supply out of ${where}, so that it runs on its battery.`,
    "one outlet": () =>
      "Take the power of all boxes on this way from one outlet strip. Every earth stays as it is.",
    "other leads out": () =>
      "Pull out every lead of these boxes that carries no sound here: USB, network, control, screens. Sound leads and power stay as they are.",
    "lead bent": (where) => `Volume low first. Bend and move ${where} along its whole length.`,
    "plugs turned": (where) =>
      `Volume low first. Turn each plug of ${where} gently in its socket; do not pull it.`,
    "nearer the sender": (where) =>
      `Carry the receiver to within a few steps of ${where}, with nothing between.`,
    "quieter source": () =>
      "Turn the source well down, then the last knob before the ears slowly up, to as loud as before.",
    "other headphones": () =>
      "Volume down first. Plug in headphones that are known to be good, then turn slowly back up.",
    elsewhere: (where) => `Listen at ${where}, or ask who sits there.`,
    recording: () =>
      "Record a minute of what is played, or take the recording there is, and listen to it on other gear.",
  },
  tried: {
    "programme stopped": () => "with nothing playing",
    "knob down": (where) => `the knob of ${where} down`,
    "knob to and fro": (where) => `the knob of ${where} to and fro`,
    "feed out": (where) => `the lead out of ${where}`,
    "on battery": (where) => `${where} on its battery`,
    "one outlet": () => "everything from one outlet",
    "other leads out": () => "leads that carry no sound out",
    "lead bent": (where) => `${where} bent`,
    "plugs turned": (where) => `the plugs of ${where} turned`,
    "nearer the sender": (where) => `the receiver beside ${where}`,
    "quieter source": () => "the source down, the last knob up",
    "other headphones": () => "with other headphones",
    elsewhere: (where) => `heard at ${where}`,
    recording: () => "on the recording",
  },
  becomes: {
    hiss: "What becomes of the hiss?",
    hum: "What becomes of the hum?",
    crackle: "What becomes of the crackle?",
    distortion: "What becomes of the distortion?",
  },
  withHand: {
    hiss: "Does the hiss change with it?",
    hum: "Does the hum change with it?",
    crackle: "Does it crackle with it?",
    distortion: "Does the distortion change with it?",
  },
  thereToo: {
    hiss: "Is the hiss there too?",
    hum: "Is the hum there too?",
    crackle: "Is the crackle there too?",
    distortion: "Is the distortion there too?",
  },
  answers: answersIn,
  causes: {
    "in the programme": (_, noise) => `${sound[noise]} is in the programme, before anything here`,
    "before the knob": (where, noise) =>
      `${sound[noise]} comes in at ${where}, before its knob: it is turned up with the programme`,
    "behind the knob": (where, noise) =>
      `${sound[noise]} comes from ${where} itself, behind its knob: no knob there turns it down`,
    "behind the last knob": (where, noise) =>
      `${sound[noise]} comes from ${where} itself, behind its knob, the last before the ears`,
    "the box itself": (where, noise) => `${sound[noise]} comes from ${where} itself`,
    "radio link": (where, noise) => `${sound[noise]} comes in by radio, behind ${where}`,
    "ground loop": (where) => `a ground loop, closed by the lead into ${where}`,
    "loop by another lead": (where) =>
      `a ground loop by another lead than the sound's, closed by the one into ${where}`,
    "lead picks it up": (where) => `${where} picks up the mains`,
    "return lost": (where) => `the return is lost or bad in ${where}`,
    "power supply": (where) => `the power supply of ${where} hums`,
    "knob dirty": (where) => `the knob of ${where} is dirty or worn`,
    "plugs not clean": (where) => `a plug of ${where}, or its socket, is not clean`,
    "lead breaking": (where) => `a wire is breaking in ${where}`,
    "cord breaking": (where) => `a wire is breaking in the cord of ${where}`,
    "source stutters": (where) => `${where} cannot keep up: the sound breaks off in it`,
    "input overloaded": (where) => `the input of ${where} is overloaded`,
    "output at its end": (where) => `${where} gives all it has: its peaks are cut off`,
    "driver torn": (where) => `a driver of ${where} is torn or worn`,
    "something else": () => "something that is not on the list",
  },
  ...remediesIn,
  alsoByEar: (faults) => `May bring it too, and the checks by ear find it: ${faults.join("; ")}.`,
  unasked: (named) => listed(named, "and"),
  askedOnlyAt: (named, seats) => `${named}, except at ${seats}`,
  tells: (bits, seconds) => `It tells ${bits} bits in about ${seconds} s.`,
};
