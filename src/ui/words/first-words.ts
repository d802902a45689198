import type { Tongue } from "#storage/settings.ts";
import { first as english } from "./english/first.ts";
import { first as german } from "./german/first.ts";
import type { FirstWords } from "./use-words.ts";

/** Both come with the page, so that the first screen waits for nothing. */
export const firstWords: Readonly<Record<Tongue, FirstWords>> = { en: english, de: german };
