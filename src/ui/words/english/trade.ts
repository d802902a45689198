import type { Term, TermName } from "#ui/words/term-names.ts";
import { sound } from "./terms-sound.ts";
import { wires } from "./terms-wires.ts";

const terms: Readonly<Record<TermName, Term>> = { ...wires, ...sound };

/** The page of the trade's words. */
export const trade = {
  title: "The words of the trade",
  find: "Find a word",
  none: "No word here has that in it.",
  letters: "To a letter",
  source: (standard: string) => `as in ${standard}`,
  practice: "Where no standard is named it is common practice.",
  terms,
};
