import { sentence } from "#core/report/phrases.ts";

/** Faults to be heard, and to be named by ear. */
export const listening = {
  titles: { plan: "Hear it before you plug in", faults: "Hear what faults sound like" },
  healthy: "healthy",
  faulty: "faulty",
  straight: "a straight feed",
  asItWillBe: "as it will be",
  thisRig: "this rig, healthy",
  asDrawn: "As it is drawn, nothing broken.",
  nothingYet: "Nothing is wrong yet. Point at a part below.",
  what: "What is wrong?",
  /** A place on tape. */
  place: (place: string) => place,
  /** A fault without its place, which stands over it already: begun as a sentence is, with no full stop. */
  briefly: (fault: string, place: string) =>
    sentence(
      fault
        .replace(/^the .*plug of .* is not home/, "not home")
        .replace(`, in ${place}`, "")
        .replace(` in ${place}`, ""),
    ).replace(/\.$/, ""),
};

/** The ear-training round. */
export const training = {
  title: "Name the fault you hear",
  making: "It is being made up.",
  /** The rig it is heard in, and who hears it. */
  seat: "one seat",
  you: "you",
  whatWas: "what it was",
  whatIsIt: "what is it?",
  right: (fault: string) => `Right: ${fault}.`,
  wrong: (fault: string) => `No, it was this: ${fault}.`,
  listenAgain: "Listen again if you like.",
  next: "the next one",
  wasThis: { heard: "it was this: you hear it", again: "it was this: hear it again" },
  tookThis: {
    heard: "you took it for this: you hear it",
    again: "you took it for this: hear it again",
  },
  score: (heard: number, named: number) => `${heard} heard, ${named} named`,
  tally: (fault: string, right: number, asked: number) => `${fault}: ${right} of ${asked}`,
  takenFor: (fault: string) => `taken for: ${fault}`,
};
