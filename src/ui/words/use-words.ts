import { createContext } from "preact";
import { useContext } from "preact/hooks";
import type { first } from "./english/first.ts";
import type { words as english } from "./english.ts";

/** What the first screen, the frame and what the world has to say need: both languages come with the page. */
export type FirstWords = typeof first;

/** All else that is said, in one language: the core's record (`language`) and one record for each part of the page. */
export type Words = typeof english;

export const FirstWordsContext = createContext<FirstWords | undefined>(undefined);
export const WordsContext = createContext<Words | undefined>(undefined);

/** The words of the first screen, in the language chosen. */
export function useFirstWords(): FirstWords {
  const words = useContext(FirstWordsContext);
  if (words === undefined) throw new Error("no words were handed to the page");
  return words;
}

/** All words behind the first screen, in the language chosen. */
export function useWords(): Words {
  const words = useContext(WordsContext);
  if (words === undefined) throw new Error("words are wanted before they were fetched");
  return words;
}
