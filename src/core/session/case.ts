import type { Log } from "./log.ts";

/** The name and the version of the format a session is written to a file in. */
export const caseFormatName = "leftwright case";
export const caseVersion = 1;

/** Brackets within brackets. Nothing we read goes deeper than a dozen. */
export const deepest = 64;

/** What a file says of a session besides its log. */
export interface About {
  /** What it was kept under, for whoever sorts files; nothing goes by it, since a session may have gone on since. */
  readonly id: string;
  /** When it was written, ms since 1970. */
  readonly written: number;
  /** The number of the bench rig; left out for real gear, and where whoever reads it may not know it. */
  readonly bench?: number;
}

/** How a session's file begins. */
export const caseBegins = JSON.stringify({ format: caseFormatName }).slice(0, -1);

/** A session as a file: a case with something said of it, one line an entry, so that a file that was cut off is cut between two. */
export function caseText(log: Log | readonly unknown[], about: About): string {
  const head = { format: caseFormatName, version: caseVersion, session: about };
  const entries = log.map((entry) => JSON.stringify(entry)).join(",\n");
  return `${JSON.stringify(head).slice(0, -1)},"log":[\n${entries}\n]}\n`;
}
