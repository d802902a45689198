import type { Oddity, Trouble } from "./trouble.ts";

/** What is said of a recording, in one language: sentences. */
export interface RecordingWords {
  /** Why a file cannot be read, and what to do. */
  readonly trouble: Readonly<Record<Trouble["trouble"], (found: string) => string>>;
  /** What is odd about a file that was read all the same. */
  readonly odd: Readonly<Record<Oddity, string>>;
  /** How often our signal is in it, and how many of those were measured. */
  readonly found: (found: number, measured: number) => string;
}

/** A trouble, in words. */
export const troubleText = (words: RecordingWords, { trouble, found }: Trouble): string =>
  words.trouble[trouble](found);
