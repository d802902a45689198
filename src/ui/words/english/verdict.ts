import { counted } from "#core/report/phrases.ts";

/** What was found: a verdict with its reasons, a position that is healthy, and behind the curtain. */
export const verdict = {
  notSure: "Not sure.",
  odds: (sure: string, odds: string) => `${sure}, ${odds}`,
  orOthers: (others: number, odds: string) =>
    `Or one of ${counted(others, "other", "others")} that no check here tells from it: ${odds}.`,
  likeliest: (why: string, fault: string, odds: string) =>
    `${why} The likeliest: ${fault} (${odds}).`,
  muted: "Muted now, for hands on the gear",
  alike: (count: number) => `No check here tells these ${count} apart, a repair does`,
  notRuledOut: "Not ruled out",
  toldBy: (turning: string) => `Told apart by: ${turning}.`,
  nothingTells: "Nothing here tells it apart.",
  why: "Why",
  left: (minutes: string) => `${minutes} to a working rig`,
  whyNext: "Why this next",
  expected: "Expected to a working rig, beginning with:",
  step: (step: string, long: string) => `${step}: ${long}`,
  asLong: "about as long",
  longer: (seconds: number) => `${seconds} s longer`,
  notTested: "What was not tested",
  healthy: "Healthy",
  nothingFound: (odds: string) =>
    `Nothing found by these checks: left in the left ear, right in the right, the middle in the middle. Trouble is still possible: ${odds}.`,
  onTo: (seat: string) => `On to ${seat}`,
  toBoard: "To the board",
  itWas: (fault: string, odds: string) => `It was: ${fault} (${odds}).`,
  likelyWas: (fault: string, odds: string) => `Most likely it was: ${fault} (${odds}).`,
  orMore: (fault: string, more: number) => `${fault}, or ${more} more like it`,
  orWas: (some: readonly { readonly text: string; readonly odds: string }[]) =>
    `Or: ${some.map(({ text, odds }) => `${text} (${odds})`).join("; ")}.`,
  aside: (part: string) => `${part} stays aside: replace it or mend it.`,
  putBack: "put it back: does it return?",
  good: (part: string) => `good ${part}`,
  curtain: {
    number: (seed: number) => `Behind the curtain of rig number ${seed}`,
    another: "Another rig with something wrong",
    setRight: "You set it right: it is gone from the rig.",
    aside: "You took it off the way: it is in what was laid aside.",
    named: "It was among those named.",
    notNamed: (odds: string) => `It was not named: ${odds} so far.`,
  },
};
