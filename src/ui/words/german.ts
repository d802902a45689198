import { english as language } from "#core/words/english.ts";
import { board } from "./german/board.ts";
import { sessions } from "./german/sessions.ts";
import type { Words } from "./use-words.ts";

/** All that is said behind the first screen, in German. */
export const words: Words = { language, board, sessions };
