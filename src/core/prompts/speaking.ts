import { onesBefore, type PromptWord, promptWords, small, tens } from "./words.ts";

/** The languages that prompts are spoken in, by their tags (BCP 47), which are also the names of their folders. */
export const spokenTags = ["en", "de"] as const;
export type SpokenTag = (typeof spokenTags)[number];

/** How prompts are put together in one language. */
export interface Speaking {
  /** The words it is made of, each a file. */
  readonly words: readonly PromptWord[];
  /** A number from 1 to 99, as it is called. */
  readonly number: (number: number) => readonly PromptWord[];
}

/** 'Twenty', then 'one'. */
function tensFirst(number: number): readonly PromptWord[] {
  const ten = tens[Math.floor(number / 10) - 2];
  return [ten, small[(ten === undefined ? number : number % 10) - 1]].filter(
    (word) => word !== undefined,
  );
}

/** 'One-and', then 'twenty'. */
function onesFirst(number: number): readonly PromptWord[] {
  const ten = tens[Math.floor(number / 10) - 2];
  const one = ten === undefined ? small[number - 1] : onesBefore[(number % 10) - 1];
  return [one, ten].filter((word) => word !== undefined);
}

/** Every language, each with its own way to count. */
export const speaking: Readonly<Record<SpokenTag, Speaking>> = {
  en: {
    words: promptWords.filter((word) => !onesBefore.some((one) => one === word)),
    number: tensFirst,
  },
  de: { words: promptWords, number: onesFirst },
};
