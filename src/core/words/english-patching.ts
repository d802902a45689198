import type { Contact, PlugKind } from "#core/parts/plugs.ts";
import { choices, parameters } from "./english-parameters.ts";
import { kinds } from "./english-parts.ts";
import type { PatchingWords } from "./patching-words.ts";

const pins: Readonly<Partial<Record<Contact, string>>> = {
  "pin 1": "pin 1, screen",
  "pin 2": "pin 2, hot",
  "pin 3": "pin 3, cold",
};
const onRca: Readonly<Partial<Record<Contact, string>>> = { tip: "centre pin", sleeve: "shell" };
const onLink: Readonly<Partial<Record<Contact, string>>> = { tip: "left", ring: "right" };

function contact(name: Contact, plug: PlugKind): string {
  if (plug === "RCA") return onRca[name] ?? name;
  return plug === "link" ? (onLink[name] ?? "its air") : (pins[name] ?? name);
}

/** What is said before anything is plugged in. Common practice, no source, where a habit of the trade is named. */
export const patching: PatchingWords = {
  kinds,
  contact,
  parameters,
  choices,
  plugs: {
    TS: "mono plug (TS)",
    TRS: "stereo plug (TRS)",
    TRRS: "headset plug (four contacts)",
    XLR: "XLR",
    RCA: "RCA",
    link: "radio or digital link",
  },
  stages: {
    "impedance-balanced": {
      name: "impedance-balanced",
      carries: (hot, cold) => `the signal on ${hot}, nothing on ${cold}`,
      manual: "'impedance balanced'; usual in small mixers",
    },
    "actively balanced": {
      name: "actively balanced",
      carries: (hot, cold) => `the signal on ${hot}, the same upside down on ${cold}`,
      manual: "'balanced' or 'electronically balanced'",
    },
    "cross-coupled": {
      name: "cross-coupled",
      carries: (hot, cold) => `the signal between ${hot} and ${cold}, tied to nothing else`,
      manual: "'servo-balanced' or 'cross-coupled'",
    },
    transformer: {
      name: "transformer",
      carries: (hot, cold) => `the signal between ${hot} and ${cold}, tied to nothing else`,
      manual: "'transformer-balanced' or 'floating output'",
    },
    "quasi-balanced": {
      name: "quasi-balanced",
      carries: (hot, cold, screen) =>
        `the signal on ${hot}, its return on ${cold}, ${screen} on nothing`,
      manual: "'sleeve not connected'",
    },
    unbalanced: {
      name: "unbalanced",
      carries: (hot, cold) => `the signal on ${hot}, no ${cold} at all`,
      manual: "'unbalanced' or 'TS'",
    },
    "unbalanced, ring tied to sleeve": {
      name: "unbalanced, ring on the sleeve",
      carries: (hot, cold, screen) => `the signal on ${hot}, ${cold} joined to ${screen}`,
      manual: "'unbalanced', on a jack of three contacts",
    },
  },
  wants: {
    stereo: "stereo",
    "mono in both ears": "mono in both ears",
    "an own mix": "a mix of their own",
    "left ear only": "left ear only",
    "right ear only": "right ear only",
  },
  ties: {
    "main fader": "its level follows the main fader",
    "monitor knob": "its level follows the monitor knob",
    "headphone knob": "its level follows the headphone knob",
    "send knob": "its level follows the send knob",
    "solo takes it over": "solo takes it over",
    "own mix": "it is a mix of its own, apart from the main one",
    "hiss past half": "it hisses past about half: make up level at the amplifier",
    "another device chosen": "it is silent while another device is chosen",
  },
  tones: {
    even: "The tone is left alone.",
    thin: "It sounds thin: the bass is lost.",
    dull: "It sounds dull: the treble is lost.",
  },
  hums: {
    none: "No hum to expect.",
    some: "Some hum may be heard.",
    loud: "Loud hum is likely.",
  },
  humWhy: {
    earths: "Both hang on mains earth, and two wall sockets are never quite alike.",
    leakage: "A supply leaks a little into the return.",
    return: "The return is not joined through, and a supply leaks into what is heard.",
  },
  harms: {
    "loudspeaker output": {
      stop: "Do not plug into this socket.",
      why: "It drives loudspeakers. Into headphones of 32 Ω it can give 12 W, more than 140 dB at the ear, and it burns them out.",
      instead: "Take a headphone socket, or a line output into a headphone amplifier.",
    },
    "phantom power": {
      stop: "Stop: phantom power.",
      why: "This socket may carry 48 V. A jack touches the wrong contacts on its way in.",
      instead:
        "Switch phantom power off first, wait a minute, then turn the volume down and patch.",
    },
    "balanced headphone output": {
      stop: "Do not adapt this socket to a stereo plug.",
      why: "Each side has an amplifier at both ends of its driver. A common return shorts two of them together.",
      instead: "Take the ordinary headphone output, or headphones wired for a balanced one.",
    },
  },
  units: {
    Ω: "Ω",
    F: "F",
    m: "m",
    AWG: "AWG",
    outputs: "",
    sets: "",
    s: "s",
    dB: "dB",
    times: "of full",
  },
  care: [
    "Volume down first, at both ends, before a hand touches a plug.",
    "Phantom power off before anything goes from XLR to a jack.",
    "Never headphones or a feed into a socket for loudspeakers.",
    "Unplug a box at the wall before it is opened. Never lift a mains earth.",
    "A tingle from metal: stop, unplug at the wall, call a licensed electrician. Local codes come before this page.",
    "In-ears are not shared.",
  ],
};
