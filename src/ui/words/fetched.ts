import type { Tongue } from "#storage/settings.ts";
import type { Words } from "./use-words.ts";

/** All words of a language, each language a file of its own that is fetched when it is spoken. */
export const fetchWords: Readonly<Record<Tongue, () => Promise<Words>>> = {
  en: () => import("./english.ts").then(({ words }) => words),
  de: () => import("./german.ts").then(({ words }) => words),
};
