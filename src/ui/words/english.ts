import { english as language } from "#core/words/english.ts";
import { asking } from "./english/asking.ts";
import { board } from "./english/board.ts";
import { complaint } from "./english/complaint.ts";
import { doing } from "./english/doing.ts";
import { help } from "./english/help.ts";
import { numbers } from "./english/numbers.ts";
import { round } from "./english/round.ts";
import { sheet } from "./english/sheet.ts";
import { sounding } from "./english/sounding.ts";
import { trade } from "./english/trade.ts";
import { verdict } from "./english/verdict.ts";

/** All that is said behind the first screen, in English. The other languages have its shape, held to it by the compiler. */
export const words = {
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
