import type { Seconds } from "#core/units/units.ts";

/** What is heard that nobody sent, a closed list. */
export const noises = ["hiss", "hum", "crackle", "distortion"] as const;
export type Noise = (typeof noises)[number];

/**
 * What is tried to learn where a noise comes in. Each is undone before the next: nothing of it is a move. Parts and sockets are the rig's own; 'elsewhere' names the position that is asked instead.
 */
export type Trial =
  | { readonly try: (typeof trialsAlone)[number] }
  | { readonly try: (typeof trialsAtPart)[number]; readonly part: string }
  | {
      readonly try: (typeof trialsAtKnob)[number];
      readonly part: string;
      readonly socket: string;
    }
  | { readonly try: "elsewhere"; readonly position: string };

export const trialsAlone = [
  "programme stopped",
  "one outlet",
  "other leads out",
  "quieter source",
  "other headphones",
  "recording",
] as const;
export const trialsAtPart = [
  "feed out",
  "on battery",
  "lead bent",
  "plugs turned",
  "nearer the sender",
] as const;
export const trialsAtKnob = ["knob down", "knob to and fro"] as const;

export type TrialName = Trial["try"];

/** The names that each kind of trial has besides its own. */
export const trialNames: Readonly<Record<TrialName, readonly ("part" | "socket")[]>> = {
  "programme stopped": [],
  "one outlet": [],
  "other leads out": [],
  "quieter source": [],
  "other headphones": [],
  recording: [],
  "feed out": ["part"],
  "on battery": ["part"],
  "lead bent": ["part"],
  "nearer the sender": ["part"],
  "knob down": ["part", "socket"],
  "knob to and fro": ["part", "socket"],
  "plugs turned": ["part"],
  // Its position is looked at apart: it is no part of the rig.
  elsewhere: [],
};

/** What became of the noise. */
const becomes = ["gone", "less", "the same", "more"] as const;
/** Whether it moves with the hand. */
const withHand = ["it goes with it", "the same"] as const;
/** Whether it is heard in another place as well. */
const places = ["there too", "not there"] as const;

export type NoiseAnswer = (typeof becomes | typeof withHand | typeof places)[number];

/** The closed list of answers to a trial. All of them: 'can't tell'. None: it cannot be tried here. */
export function answersTo(name: TrialName): readonly NoiseAnswer[] {
  switch (name) {
    case "lead bent":
    case "plugs turned":
    case "knob to and fro":
      return withHand;
    case "elsewhere":
    case "recording":
      return places;
    default:
      return becomes;
  }
}

/** Seconds for each, with putting it back. Common practice, no source. */
export const trialSeconds: Readonly<Record<TrialName, Seconds>> = {
  "programme stopped": 8,
  "knob down": 10,
  "knob to and fro": 10,
  "plugs turned": 15,
  "lead bent": 15,
  "on battery": 15,
  "quieter source": 20,
  "feed out": 25,
  "other headphones": 25,
  "nearer the sender": 30,
  "other leads out": 35,
  elsewhere: 35,
  recording: 90,
  "one outlet": 120,
};

/** Two trials are the same where this is. */
export const trialKey = (trial: Trial): string =>
  [
    trial.try,
    "part" in trial ? trial.part : "",
    "socket" in trial ? trial.socket : "",
    "position" in trial ? trial.position : "",
  ].join(" / ");
