import { counted, sentence } from "#core/report/phrases.ts";

/** A lead to be proved: what it is, how it is proved, and what is asked of a meter. */
export const prove = {
  /** Whoever has the lead in hand, as a position is called. */
  you: "you",
  betweenGood: (lead: string) => `${lead}, between gear that is known to be good`,
  choice: {
    one: {
      title: "What is at one end?",
      hint: "Take the lead out of everything, and point at the end in your hand. A jack may be of either size.",
      label: "one end",
    },
    other: {
      title: "And at its other end?",
      hint: "Point at what it looks like.",
      label: "the other end",
    },
    ends: (one: string, other: string) => `${one} to ${other}`,
    kind: "What should it be?",
    kindHint: "Contact to contact, as it is meant.",
    kindLabel: "what it should be",
    unknown: { name: "tell me what this is", note: "With a multimeter: a reading at a time." },
  },
  /** What is at an end of a lead, as somebody says it who has it in the hand. */
  ends: {
    TRS: { name: "stereo jack", note: "three contacts: two black bands (TRS)" },
    TS: { name: "mono jack", note: "two contacts: one black band (TS)" },
    XLR: { name: "XLR", note: "three pins, or three holes" },
    "two TS": { name: "two mono jacks", note: "left and right (TS)" },
    "two TRS": { name: "two jacks of three contacts", note: "left and right (TRS)" },
    "two RCA": { name: "two RCA", note: "red is right" },
    "two XLR": { name: "two XLR", note: "left and right" },
    "TRS socket": { name: "jack socket in the lead", note: "a plug goes into it" },
  },
  how: {
    title: "How will you prove it?",
    label: "ways of proving it",
    cannotSee: (names: readonly string[], more: number) =>
      `It cannot see: ${names.join("; ")}${more > 0 ? `; and ${more} more` : ""}.`,
  },
  /** The ways of proving a lead, and what each wants. */
  methods: {
    return: {
      name: "back into the sound card",
      note: "From its outputs through the lead into its line inputs. Half a minute.",
    },
    "load box": {
      name: "through a load box",
      note: "From its outputs into two resistors, and from across these into its line inputs. Half a minute.",
    },
    ear: {
      name: "by ear",
      note: "Between gear and headphones that are known to be good. Three or four sounds.",
    },
    meter: {
      name: "with a multimeter",
      note: "Contact to contact, unplugged at both ends. A reading at a time.",
    },
  },
  /** What a way does not see of a lead, in a row of such names. */
  unseen: {
    whether: (fault: string) => `whether ${fault}`,
    capacitance: "capacitance",
    wire: (one: string, other: string) => `${one} to ${other}`,
    dirt: (ohms: number) => `dirt of ${ohms} Ω or less`,
  },
  meter: {
    unknown: "a lead to tell",
    touch: (one: string, other: string) => `Touch ${withThe(one)} and ${withThe(other)}.`,
    drawn: (one: string, other: string) =>
      `One probe on ${withThe(one)}, the other on ${withThe(other)}.`,
    again: "Once more, to be sure.",
    bend: "Keep both probes on, and bend the lead along its length and at its plugs.",
    mayLie: "The lead may lie still for this one.",
    apart: "These two should not meet.",
    left: (count: number) =>
      `${counted(count, "reading", "readings")} left where all is well; more where something is not.`,
    moreToTell: "It is not what it looked like, or something is wrong in it: a few more tell.",
    moreOfWrong: "Something is not as it should be: a few more tell what.",
    cautions: {
      out: "The lead out of everything, at both ends. Never while somebody wears what hangs on it: a meter clicks at 85 dB in the ears.",
      ohms: "The meter on its lowest ohms, with its beep where it has one. Put the probes together first: what it shows then is its own.",
      alike: "Both ends look alike: a bit of tape on one of them, marked A.",
      brief: "Unplugged at both ends; never while worn.",
    },
    shows: "What does the meter show?",
    beep: ["beep", "near 0 Ω"],
    noBeep: ["no beep", "open"],
    changes: ["it changes", "when I bend it"],
    about: (ohms: string) => `about ${ohms}`,
    typed: "or as it reads, in Ω",
    enter: "enter",
    refused: (text: string) =>
      `'${text}' is not understood: a number of ohms, as 0.4 or 12 or 1.2k. Where the meter shows OL or 1 alone, point at 'no beep'.`,
    /** What was shown, in the line of the last reading. */
    last: (one: string, other: string, shown: string) => sentence(`${one} and ${other}: ${shown}`),
    takeBack: "take the last reading back",
    shownBeep: "beep, near 0 Ω",
    shownOpen: "no beep, open",
    comesAndGoes: (shown: string) => `${shown}, and it comes and goes`,
  },
  /** A contact by its end's letter, and an end by its letter and its side: 'tip of A, left'. */
  contactAt: (contact: string, end: string) => `${contact} of ${end}`,
  end: (letter: string, mark: string | undefined) =>
    mark === undefined ? letter : `${letter}, ${mark}`,
  result: {
    asItShould: "As it should be",
    itIs: (lead: string) => `It is this: ${lead}. Nothing is wrong with it.`,
    unsure: "Not sure.",
    faults: (faults: readonly string[]) => sentence(faults.join(", and ")),
    /** How sure it is: in words, and so many in a hundred. */
    sure: (sure: string, odds: string) => sentence(`${sure}, ${odds}`),
    nothingFound: (sure: string, odds: string) =>
      `Nothing wrong was found, and some was not tried: ${sure}, ${odds}.`,
    likeliest: (faults: readonly string[], sure: string, odds: string) =>
      `Nothing more tells here. The likeliest: ${faults.join(", and ")} (${sure}, ${odds}).`,
    cannotSee: "What this way cannot see",
    notTested: (name: string) => `${name}: not tested`,
    cancelling: "two faults that cancel each other",
    whatNow: "What now",
    toMend: "To mend it",
    cautions: [
      "Out of everything, at both ends, before it is opened.",
      "Fresh air and something before your eyes; tin spits, and the iron stays hot.",
    ],
    byMeter: "Settle it with a multimeter",
    checkAgain: "Check again",
    doneCheckAgain: "Done, check again",
    tellAnother: "Tell another with these ends",
    another: "Another lead of the same kind",
    otherWay: "Measure another way",
    alike: "Nothing here tells it from",
    mayBe: "It may also be",
    candidate: (kind: string, odds: string) => `${kind} (${odds})`,
    candidateWith: (kind: string, fault: string, odds: string) =>
      `${kind}, where ${fault} (${odds})`,
    returnOpen: "The return reads as open.",
    returnGood: (error: string) => `The return reads as it should be, give or take ${error}.`,
    returnMore: (ohms: string, error: string) =>
      `The return reads ${ohms} more than it should have, give or take ${error}.`,
    meant: "wired as it is meant",
    asMeant: "as it is meant",
    asItIs: "as it is, most likely",
    itIsNow: (faults: readonly string[]) => `as it is: ${faults.join(", ")}`,
    stopped: "Readings stop at what is enough to open it for; check it again once it is mended.",
    dotted: "Dotted: not read.",
  },
};

/** Pins bear numbers, so that they want no article. */
export function withThe(contact: string): string {
  return contact.startsWith("pin ") ? contact : `the ${contact}`;
}
