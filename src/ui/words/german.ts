import { german as language } from "#core/words/german.ts";
import { german as recording } from "#recording/german.ts";
import { asking } from "./german/asking.ts";
import { board } from "./german/board.ts";
import { complaint } from "./german/complaint.ts";
import { cups } from "./german/cups.ts";
import { doing } from "./german/doing.ts";
import { figures } from "./german/figures.ts";
import { flex } from "./german/flex.ts";
import { help } from "./german/help.ts";
import { levelNumbers } from "./german/level-numbers.ts";
import { levels } from "./german/levels.ts";
import { levelsMore } from "./german/levels-more.ts";
import { listening, training } from "./german/listening.ts";
import { marks } from "./german/marks.ts";
import { measure } from "./german/measure.ts";
import { noises } from "./german/noises.ts";
import { numbers } from "./german/numbers.ts";
import { plan } from "./german/plan.ts";
import { planFacts } from "./german/plan-facts.ts";
import { prove } from "./german/prove.ts";
import { proveBench } from "./german/prove-bench.ts";
import { returning } from "./german/returning.ts";
import { rig } from "./german/rig.ts";
import { round } from "./german/round.ts";
import { sessions } from "./german/sessions.ts";
import { sheet } from "./german/sheet.ts";
import { sounding } from "./german/sounding.ts";
import { sounds } from "./german/sounds.ts";
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
  noises,
  numbers,
  sheet,
  rig,
  trade,
  sessions,
  figures,
  levels,
  levelNumbers,
  levelsMore,
  listening,
  training,
  marks,
  plan,
  planFacts,
  prove,
  proveBench,
  sounds,
  measure,
  returning,
  recording,
  flex,
  cups,
};
