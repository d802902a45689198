import { english as language } from "#core/words/english.ts";
import { board } from "./german/board.ts";
import { help } from "./german/help.ts";
import { numbers } from "./german/numbers.ts";
import { sheet } from "./german/sheet.ts";
import { trade } from "./german/trade.ts";
import type { Words } from "./use-words.ts";

/** All that is said behind the first screen, in German. */
export const words: Words = { language, board, help, numbers, sheet, trade };
