import { german as language } from "#core/words/german.ts";
import { asking } from "./german/asking.ts";
import { board } from "./german/board.ts";
import { complaint } from "./german/complaint.ts";
import { doing } from "./german/doing.ts";
import { help } from "./german/help.ts";
import { numbers } from "./german/numbers.ts";
import { round } from "./german/round.ts";
import { sheet } from "./german/sheet.ts";
import { sounding } from "./german/sounding.ts";
import { trade } from "./german/trade.ts";
import { verdict } from "./german/verdict.ts";
import type { Words } from "./use-words.ts";

/** All that is said behind the first screen, in German. */
export const words: Words = {
  language,
  board,
  round,
  sounding,
  asking,
  doing,
  verdict,
  complaint,
  help,
  numbers,
  sheet,
  trade,
};
