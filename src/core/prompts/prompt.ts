import type { Seconds } from "#core/units/units.ts";
import type { Speaking } from "./speaking.ts";
import { isBefore, isDigit, isTens, type Phrase, type PromptWord } from "./words.ts";

/** What is said into the listener's ears. */
export type Prompt =
  | { readonly prompt: Phrase }
  /** 'Position 12'. */
  | { readonly prompt: "position"; readonly number: number }
  /** 'Output 3 and 4'. */
  | { readonly prompt: "outputs"; readonly numbers: readonly [number, number] };

/** Positions that can be said go from 1 to this, */
export const highestPosition = 99;
/** and outputs to this. */
export const highestOutput = 64;

/** Between two words (common practice, no source). */
const pause: Seconds = 0.06;

/**
 * The files to say in a language, in order.
 * @throws RangeError for a position that is no whole number from 1 to 99, or an output that is none from 1 to 64
 */
export function wordsOf(speaking: Speaking, prompt: Prompt): readonly PromptWord[] {
  switch (prompt.prompt) {
    case "position":
      return ["position", ...speaking.number(whole(prompt.number, highestPosition))];
    case "outputs": {
      const [first, second] = prompt.numbers.map((number) =>
        speaking.number(whole(number, highestOutput)),
      );
      return ["output", ...(first ?? []), "and", ...(second ?? [])];
    }
    default:
      return [prompt.prompt];
  }
}

/** Seconds of silence before each word: none before the first, nor inside a number. */
export const gapsOf = (words: readonly PromptWord[]): readonly Seconds[] =>
  words.map((word, at) => {
    const before = words[at - 1];
    const within = before !== undefined && (isBefore(before) || (isTens(before) && isDigit(word)));
    return before === undefined || within ? 0 : pause;
  });

function whole(number: number, highest: number): number {
  if (!Number.isInteger(number) || number < 1 || number > highest)
    throw new RangeError(`${number} is not a whole number from 1 to ${highest}`);
  return number;
}
