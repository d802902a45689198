import type { Trouble } from "#audio/world.ts";
import type { Theme } from "#storage/settings.ts";
import type { Notice } from "#ui/words/notice.ts";
import { starts } from "./starts.ts";

/** What went wrong with the sound, and what to do. */
const trouble: Readonly<Record<Trouble, string>> = {
  "no output":
    "There is no sound output with two sides. Plug one in or choose one in the system's settings, then press Play.",
  suspended:
    "The browser holds the sound back. Press Play again; if it stays silent, allow sound for this page in the browser.",
  lost: "The output changed or went away, so the sound was stopped. Volume down first, see that the right output is chosen, then press Play: it starts quietly.",
  hidden:
    "The page was out of sight, so the sound was stopped. Press Play when you are back: it starts quietly.",
  "not loaded":
    "The part that makes the sound did not load. Look at the connection and press Play again; if that does not help, reload the page. Nothing is lost.",
  gone: "The output that was chosen has gone, so the sound was stopped. Plug it in again, or choose another under Sound out.",
  "not that device":
    "The browser would not play to the output that was chosen. Choose it again under Sound out, or let the system choose.",
  refused:
    "This sound did not pass the check that protects ears, so it was not played. Reload the page; if it comes back, do not use this copy.",
};

const notice: Readonly<Record<Notice, string>> = {
  dropped:
    "What was kept from the last session could not be understood, so it was put away. Begin anew.",
  mended:
    "Some of what was kept could not be understood and was left out. All the rest of the session is here.",
  "not loaded":
    "A part of the program did not load. Look at the connection, then reload the page. Nothing is lost.",
  "not worked out":
    "This rig could not be worked out, so its last change was taken back. Nothing else is lost.",
  "not kept":
    "This browser will not keep anything here, as in a private window. The session goes on, but a reload would lose it.",
  full: "The disk is full, so the last answers are not kept. The session goes on, but a reload would lose them. Make room: they are kept with the next answer.",
  failed:
    "The browser could not write to the disk, so the last answers are not kept. The session goes on, but a reload would lose them. They are tried again with the next answer.",
  blocked:
    "Another tab holds an older copy of this program, so nothing is kept here. Close that tab; it is tried again with the next answer.",
  newer:
    "A newer copy of this program has been here, and this one cannot keep anything. Reload the page before you go on.",
  taken:
    "Another tab wrote to this session meanwhile. Here is what it wrote; your last press was not entered, so press again.",
  late: "The disk is slow: the last answer is not kept yet. Wait a moment before you close the page.",
};

/** The first screen, the frame around every screen, and what the world has to say. */
export const first = {
  /** Which way it is written. */
  direction: "ltr" as "ltr" | "rtl",
  trouble,
  starts,
  notice,
  silence: "Silence",
  escape: "Esc",
  back: "back",
  board: "board",
  whatIsThis: "what is this?",
  soundOut: "Sound out",
  look: {
    title: "Look and language",
    themes: "The page looks",
    theme: {
      "as the system": "as the system",
      dark: "dark",
      light: "light, for daylight",
      "red lamp": "red, for a dark stage",
    } satisfies Record<Theme, string>,
    language: "It speaks",
  },
  own: {
    kept: "All of it is on this device: it opens without a network too.",
    notKept: "It is not on this device yet: without a network it would not open.",
    install: "Install it on this device",
    byHand:
      "To have it among your programs, look for “Install” or “Add to Home Screen” in the browser’s menu.",
    newer: "A newer version is here.",
    take: "Begin anew with it",
  },
  follows: "Another tab writes this session; this one shows what it writes.",
  writeHere: "Write here",
  start: {
    /** Names of the rigs that come with the program; all others are as somebody gave them. */
    rigName: (name: string): string => name,
    lead: "Finds the link that is wrong between the mixer and the ears, by what the ears hear.",
    everyone: "Check everyone's headphones",
    everyoneMore: "Which is most like yours?",
    wrong: "Something sounds wrong",
    wrongMore: "One dead ear, no voice, hollow, or hum",
    prove: "Prove a lead",
    proveMore: "Just made, just mended, or not to be trusted",
    bench: "A rig to try without gear",
    benchMore: "Something in it is wrong. Good headphones and two minutes.",
    number: "rig number",
    byChance: "by chance",
    besides: "Besides",
    plan: "Will it work, and which lead?",
    hear: "Hear what faults sound like",
    train: "Train your ears: name the fault",
    measure: "Measure with a sound card",
    flex: "Bend a lead and watch",
    sounds: "Test sounds, to play or take away",
    soundOut: "Where the sound goes",
    goOn: "Go on with the last session",
    sessions: "All sessions",
    noGear: "the rig without gear",
    nothingHeard: "nothing heard yet",
  },
};
