import type { StandInFeed } from "#core/rig/stand-ins.ts";

const notKnown = "don't know";

/** What each feed is called, and how it usually stands there. */
const feeds: Readonly<Record<StandInFeed, { readonly name: string; readonly note: string }>> = {
  laptop: { name: "a computer", note: "straight in its socket" },
  phone: { name: "a phone", note: "straight in its socket" },
  "amplifier after a mixer": { name: "a headphone amplifier", note: "with a mixer before it" },
  "belt pack": { name: "a belt pack", note: "by radio" },
  "personal mixer": { name: "a personal mixer", note: "one at each seat" },
  "don't know": { name: notKnown, note: "what is usual will do for now" },
};

/** One complaint as a way in. */
export const complaint = {
  quoted: (said: readonly string[]) => `“${said.join(", or ")}”`,
  questions: {
    said: "What do they say?",
    feed: "What do their headphones hang on?",
    worn: "What do they wear?",
    listeners: "How many hear this feed?",
    seat: "Who says so?",
    others: "Does anybody else hear it so?",
  },
  nearest: "Point at what is nearest; no word decides anything by itself.",
  ownWords: "In their own words",
  lastRig: "the rig of your last session",
  feeds,
  worn: { headphones: "headphones", "in-ears": "in-ears" },
  notKnown,
  justOne: "just one",
  others: { none: "only this one", all: "all of them", "don't know": "nobody asked yet" },
  tells: "It tells what all share from what is this seat's own.",
};
