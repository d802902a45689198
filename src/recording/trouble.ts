import type { Hertz } from "#core/units/units.ts";

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
export type TroubleName = (typeof troubleNames)[number];

/** A kind of file that is no WAV: writing, or by its proper names, of which it may be either. */
export type OtherKind = "text" | "UTF-16 text" | readonly [string, ...string[]];

/** What stands in the file, where that helps. */
interface FoundAt {
  readonly "other kind": OtherKind;
  /** The form it says it has, where that can be printed. */
  readonly "other RIFF": string | undefined;
  readonly "format too short": { readonly bytes: number };
  /** By its proper name, or by the number that stands for it. */
  readonly compressed: { readonly name: string } | { readonly format: number | string };
  readonly bits: { readonly bits: number; readonly float: boolean };
  readonly "too many channels": { readonly channels: number };
  readonly rate: { readonly rate: Hertz };
  /** Bytes of one sample of all channels. */
  readonly "frame size": { readonly is: number; readonly should: number };
}

/** What is found with a trouble; nothing with most. */
export type Found<Name extends TroubleName> = Name extends keyof FoundAt
  ? FoundAt[Name]
  : undefined;

type Troubled<Name extends TroubleName> = Name extends TroubleName
  ? { readonly trouble: Name; readonly found: Found<Name> }
  : never;

/** Why nothing can be read of a file, with what stands there where that helps. */
export type Trouble = Troubled<TroubleName>;

/** A trouble with nothing to say of what was found. */
export const troubled = (trouble: Exclude<TroubleName, keyof FoundAt>): Trouble => ({
  trouble,
  found: undefined,
});

/** What is odd about a file that can be read all the same. */
export const oddities = [
  "cut off",
  "length not written",
  "part of a frame",
  "not numbers",
] as const;
export type Oddity = (typeof oddities)[number];
