import type { Complaint } from "#core/checks/complaints.ts";
import type { ComplaintWords } from "./language.ts";

const oneEar: readonly Complaint[] = ["only the left ear works", "only the right ear works"];
const oneQuiet: readonly Complaint[] = ["left side quiet", "right side quiet"];
const leftDead: readonly Complaint[] = ["only the right ear works", "left side quiet"];
const rightDead: readonly Complaint[] = ["only the left ear works", "right side quiet"];
const middle: readonly Complaint[] = ["no voice", "hollow or thin"];
const loose: Complaint = "crackle, or it comes and goes";

/** Common practice, no source: handbook, section 6, has which words people use; that each may mean several things is the point. */
const means: ComplaintWords["means"] = {
  "only one ear works": oneEar,
  "one ear is dead": [...oneEar, ...oneQuiet],
  dead: [...oneEar, "nothing at all"],
  "left is dead": leftDead,
  "right is dead": rightDead,
  "only left": rightDead,
  "only right": leftDead,
  "left side cuts out": [...leftDead, loose],
  "right side cuts out": [...rightDead, loose],
  "one side is quiet": [...oneQuiet, ...oneEar],
  "off to one side": [...oneQuiet, ...oneEar],
  karaoke: middle,
  "no vocals": middle,
  "vocals gone": middle,
  "voice far away": middle,
  "one instrument is missing": ["a part is missing", "no voice", "the same in both ears"],
  hollow: ["hollow or thin", "no voice"],
  phasey: ["hollow or thin", "no voice", "something else"],
  "too wide": ["hollow or thin", "no voice", "something else"],
  underwater: ["hollow or thin", "no voice", "quiet on both sides", "something else"],
  echoey: ["hollow or thin", "no voice", "something else"],
  thin: ["hollow or thin", "quiet on both sides", ...oneQuiet],
  tinny: ["hollow or thin", "quiet on both sides", ...oneQuiet],
  "no bass": ["hollow or thin", "no voice", "quiet on both sides", "something else"],
  mono: [
    "the same in both ears",
    "a part is missing",
    "hollow or thin",
    "something else",
    ...oneEar,
  ],
  "no stereo": ["the same in both ears", "a part is missing", ...oneEar],
  "wrong way round": ["sides swapped"],
  backwards: ["sides swapped", "something else"],
  strange: ["sides swapped", "hollow or thin", "the same in both ears", "something else"],
  "too quiet": ["quiet on both sides", "nothing at all", "hollow or thin"],
  nothing: ["nothing at all", "quiet on both sides"],
  hiss: ["hiss", "something else"],
  hum: ["hum", "something else"],
  buzz: ["hum", "crackle, or it comes and goes", "something else"],
  crackle: [loose, "something else"],
  "all fine": ["no complaint"],
  "comes and goes": [loose],
  "cuts out": [loose, ...oneEar, "nothing at all"],
  "changes when it is moved": [loose],
};

/** What is said of complaints. */
export const complaintWords: ComplaintWords = {
  said: {
    "only the left ear works": "only the left ear works",
    "only the right ear works": "only the right ear works",
    "left side quiet": "the left side is quiet",
    "right side quiet": "the right side is quiet",
    "quiet on both sides": "too quiet in both ears",
    "nothing at all": "nothing at all",
    "no voice": "the voice is gone",
    "hollow or thin": "hollow, thin, far away",
    "the same in both ears": "the same in both ears",
    "a part is missing": "one part is missing",
    "sides swapped": "left and right are swapped",
    hiss: "it hisses",
    hum: "it hums",
    "crackle, or it comes and goes": "it crackles, or comes and goes",
    "something else": "something else is wrong",
    "no complaint": "all is well",
  },
  means,
  eitherEar: "only one ear works",
  meOrGear: {
    headphones:
      "You or the gear? Turn the headphones round on the head. If the bad side stays at the same ear, new gear will not help: this tests feeds, not hearing, so see a clinician. If it changes ears, it is the gear.",
    inEars:
      "You or the gear? In-ears are never turned round or lent: put on headphones known to be good, in the same socket. If the same ear stays bad, new gear will not help: this tests feeds, not hearing, so see a clinician.",
  },
};
