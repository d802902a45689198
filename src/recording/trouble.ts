/** Why nothing can be read of a file. */
export const troubleNames = [
  "empty",
  "other kind",
  "unknown kind",
  "big-endian",
  "other RIFF",
  "cannot be read",
  "header cut off",
  "no format",
  "format too short",
  "compressed",
  "bits",
  "no channels",
  "too many channels",
  "no rate",
  "rate",
  "frame size",
  "no data",
  "no samples",
] as const;
type TroubleName = (typeof troubleNames)[number];

/** Why nothing can be read of a file, with what stands there where that helps. */
export interface Trouble {
  readonly trouble: TroubleName;
  /** A proper name or a number, as 'MP3' or '5 instead of 4'; '' where there is none. */
  readonly found: string;
}

export const troubled = (trouble: TroubleName, found = ""): Trouble => ({ trouble, found });

/** What is odd about a file that can be read all the same. */
export const oddities = [
  "cut off",
  "length not written",
  "part of a frame",
  "not numbers",
] as const;
export type Oddity = (typeof oddities)[number];
