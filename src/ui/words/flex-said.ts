import type { FlexFault } from "#core/measurement/flex-names.ts";

/** What a language makes a sentence of: what let go, by how much, and for how long. */
export interface FlexSaid {
  readonly fault: FlexFault;
  /** Decibels, where it was not gone altogether. */
  readonly down: string | undefined;
  /** How often within that time. */
  readonly breaks: number;
  readonly lasted: string;
  /** It goes on. */
  readonly going: boolean;
  /** It was a short, where that is worth a word. */
  readonly shorted: boolean;
}
