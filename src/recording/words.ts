import type { Found, Oddity, Trouble, TroubleName } from "./trouble.ts";

/** What is said of a recording, in one language: sentences. */
export interface RecordingWords {
  /** Why a file cannot be read, and what to do. */
  readonly trouble: { readonly [Name in TroubleName]: (found: Found<Name>) => string };
  /** What is odd about a file that was read all the same. */
  readonly odd: Readonly<Record<Oddity, string>>;
  /** How often our signal is in it, and how many of those were measured. */
  readonly found: (found: number, measured: number) => string;
}

/** A trouble, in words. */
export function troubleText(words: RecordingWords, { trouble, found }: Trouble): string {
  const says = words.trouble[trouble] as (found: Trouble["found"]) => string;
  return says(found);
}
