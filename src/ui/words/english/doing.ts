/** What hands do: one move, what to look for, and what was done unasked. */
export const doing = {
  muted: "Muted now, for hands on the gear.",
  lookFor: (seen: readonly string[]) => `Look for: ${seen.join("; ")}.`,
  asItWas: "Then all is as it was.",
  mayCure: "This may cure it.",
  seeWhat: "To see what changes: the next answer tells.",
  leaveAside: "Leave it aside",
  notPossible: "Not possible here",
  comesBack: "Sound comes back 20 dB lower.",
  done: "Done, check again",
  otherOperator: "Somebody else writes now, check again",
  otherListener: "Somebody else listens now, check again",
  curtain: "lift the curtain",
  didElse: "Something else was done",
  toWhat: "What was it done to?",
  somethingElse: "it was something else",
  takeBack: "take the last answer back",
};
