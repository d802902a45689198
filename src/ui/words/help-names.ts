/** Every screen that has a question of its own; a position has several, by what it needs. */
export const helpNames = [
  "start",
  "board",
  "hands up",
  "curtain",
  "rig",
  "levels",
  "sessions",
  "plan",
  "listen",
  "sheet",
  "words",
  "complaint",
  "noise",
  "sound out",
  "prove",
  "prove reading",
  "sounds",
  "flex",
  "measure",
  "training",
  "asked",
  "absent",
  "balance",
  "look",
  "twist",
  "do",
  "verdict",
  "healthy",
  "cups",
] as const;
export type HelpName = (typeof helpNames)[number];

/** The one question of a screen, and its answer in two or three sentences. */
export interface HelpText {
  readonly question: string;
  readonly answer: string;
}
