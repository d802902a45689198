import type { Seconds } from "#core/units/units.ts";
import { isDigit, isTens, type Phrase, type PromptWord, small, tens } from "./words.ts";

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
 * The files to say, in order.
 * @throws RangeError for a position that is no whole number from 1 to 99, or an output that is none from 1 to 64
 */
export function wordsOf(prompt: Prompt): readonly PromptWord[] {
  switch (prompt.prompt) {
    case "position":
      return ["position", ...numberWords(prompt.number, highestPosition)];
    case "outputs": {
      const [first, second] = prompt.numbers.map((number) => numberWords(number, highestOutput));
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
    return before === undefined || (isTens(before) && isDigit(word)) ? 0 : pause;
  });

function numberWords(number: number, highest: number): readonly PromptWord[] {
  if (!Number.isInteger(number) || number < 1 || number > highest)
    throw new RangeError(`${number} is not a whole number from 1 to ${highest}`);
  const ten = tens[Math.floor(number / 10) - 2];
  const rest = small[(ten === undefined ? number : number % 10) - 1];
  return [ten, rest].filter((word) => word !== undefined);
}
