import { complaintWords } from "./english-complaints.ts";
import { faults } from "./english-faults.ts";
import { refusals } from "./english-measuring.ts";
import { moves } from "./english-moves.ts";
import { noiseWords } from "./english-noises.ts";
import { patching } from "./english-patching.ts";
import { prompts } from "./english-prompts.ts";
import { answers, heard, names, phrases, report } from "./english-report.ts";
import { sheet } from "./english-sheet.ts";
import { signalWords } from "./english-signals.ts";
import { where } from "./english-where.ts";
import type { Language } from "./language.ts";

/** Everything the program says about the rig and its faults, in English. */
export const english: Language = {
  phrases,
  names,
  report,
  faults,
  where,
  moves,
  operator: "whoever writes the answers down",
  client: "whoever ordered the feed",
  asOrdered: "it is meant to be in stereo",
  shared: "what all share",
  byHand: {
    look: (place) => `a look at ${place}`,
    ask: (person) => `asking ${person}`,
    twist: (part) => `the plug of ${part} twisted`,
    complaint: "the complaint",
    continuity: (part, from, to) => `${part}, from ${from} to ${to}`,
    matrix: "measured",
  },
  patching,
  prompts,
  signals: signalWords,
  sheet,
  refusals,
  heard,
  answers,
  complaints: complaintWords,
  noises: noiseWords,
  checks: {
    left: {
      name: "one knock",
      before: "One knock, twice.",
      questions: ["Where was the knock?"],
    },
    right: {
      name: "two knocks",
      before: "Two quick knocks, twice.",
      questions: ["Where were the knocks?"],
    },
    pair: {
      name: "two bursts",
      before: "Two rushes of noise, one after the other.",
      questions: ["Where was the first?", "Where was the second?"],
    },
    cup: {
      name: "touch the cup",
      before: "One knock, twice. Put a hand on the cup it is in.",
      questions: ["Which letter is on the cup you touched?"],
    },
    silence: {
      name: "silence",
      before: "Nothing plays. Listen.",
      questions: ["Did you hear anything?"],
    },
    balance: {
      name: "push to the middle",
      before: "Noise that goes on. Push it to the middle of the head.",
      questions: ["Where is it in the middle?"],
    },
  },
  effects: {
    straight: "left in the left ear, right in the right",
    nothing: "nothing arrives",
    "left gone": "the left side does not arrive",
    "right gone": "the right side does not arrive",
    swapped: "left and right have changed places",
    mono: "both ears get left and right together",
    difference: "both ears get left minus right: whatever is in the middle is gone",
    "mono, one ear inverted": "both ears get the same mono, one of them upside down: hollow",
    "one side inverted": "one side is upside down: the middle has no place",
    "left in both": "the left side is in both ears, the right is gone",
    "right in both": "the right side is in both ears, the left is gone",
    "left in both, one inverted":
      "the left side is in both ears, upside down in one: hollow; the right is gone",
    "right in both, one inverted":
      "the right side is in both ears, upside down in one: hollow; the left is gone",
    "left in the right ear": "the left side is in the right ear, the right does not arrive",
    "right in the left ear": "the right side is in the left ear, the left does not arrive",
    "all in the left ear": "everything is in the left ear",
    "all in the right ear": "everything is in the right ear",
    "left weak": "the left side is weaker",
    "right weak": "the right side is weaker",
    mixed: "the sides are mixed up in each other",
  },
  asItShouldBe: "all as it should be",
  volumeFirst: "Volume down first",
  nowAndThen: ", now and then",
  neverTested: [
    "both sides inverted together",
    "two faults that cancel each other",
    "the level: loud enough, or too loud",
    "what comes and goes more seldom than every second time",
    "a volume knob that is uneven near its bottom",
    "listening with one cup off",
    "what goes into the mixer: microphones, other sends, other pans",
  ],
};
