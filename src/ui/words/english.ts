import { english as language } from "#core/words/english.ts";
import { board } from "./english/board.ts";
import { sessions } from "./english/sessions.ts";

/** All that is said behind the first screen, in English. The other languages have its shape, held to it by the compiler. */
export const words = { language, board, sessions };
