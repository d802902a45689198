import type { Prediction } from "#core/patching/prediction.ts";
import type { Words } from "#ui/words/use-words.ts";

/** An ear below this gets nothing worth a word about its tone, decibels. */
const faint = -30;

/** That bass or treble is missing, where both ears get something; what bleeds into a dead one is thin and goes without saying. */
export const toneWords = ({ language }: Words, { tone, level }: Prediction): readonly string[] =>
  tone === "even" || Math.min(...level) < faint ? [] : [language.patching.tones[tone]];
