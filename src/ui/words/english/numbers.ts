import { counted } from "#core/report/phrases.ts";

/** The strip of numbers at a position. */
export const numbers = {
  open: "numbers",
  title: "In numbers",
  beliefs: "Believed",
  trouble: "something audible is wrong here",
  more: (alike: number) => `and ${counted(alike, "other", "others")} that answer alike`,
  others: (count: number, most: string) =>
    `${counted(count, "other", "others")}, none over ${most}`,
  ears: "At the ears, 1 kHz, against what the source gives",
  sound: "with nothing wrong",
  under: (fault: string) => `if ${fault}`,
  ear: "ear",
  ofLeft: "of left",
  ofRight: "of right",
  left: "left",
  right: "right",
  nothing: "nothing",
  checks: "What each check would tell",
  check: "check",
  bits: "bits",
  seconds: "seconds",
  perMinute: "bits a minute",
  less: (count: number, bits: string) =>
    `${counted(count, "other", "others")}, less than ${bits} bits`,
  steps: "Expected seconds to a working rig, beginning with",
};
