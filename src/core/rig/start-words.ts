/** The starts there are, in the order they are offered. */
export const startKeys = [
  "podcast table",
  "rehearsal room",
  "small studio",
  "classroom",
  "stage in-ears",
  "one person",
  "draw your own",
] as const;
export type StartKey = (typeof startKeys)[number];

/** What a part of a start is called before anybody gives it another name; several of one kind get a number. */
export type StartPart =
  | "laptop"
  | "laptop lead"
  | "interface"
  | "mixer"
  | "console"
  | "left input lead"
  | "right input lead"
  | "feed lead"
  | "left lead"
  | "right lead"
  | "amplifier"
  | "table amplifier"
  | "transmitter"
  | "belt pack"
  | "extension"
  | "adapter"
  | "headphones"
  | "in-ears";

/** The names of everything in the starts, in one language: part ids are what people read. */
export interface StartWords {
  readonly parts: Readonly<Record<StartPart, string>>;
  readonly starts: Readonly<Record<StartKey, { readonly name: string; readonly seats: Seats }>>;
}

/** What stands on the tape of each seat behind its number; as many seats as there are names. */
type Seats = readonly [string, ...string[]];
