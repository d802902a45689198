import { english as language } from "#core/words/english.ts";
import { board } from "./english/board.ts";
import { help } from "./english/help.ts";
import { numbers } from "./english/numbers.ts";
import { sheet } from "./english/sheet.ts";
import { trade } from "./english/trade.ts";

/** All that is said behind the first screen, in English. The other languages have its shape, held to it by the compiler. */
export const words = { language, board, help, numbers, sheet, trade };
