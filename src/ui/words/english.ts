import { english as language } from "#core/words/english.ts";
import { english as recording } from "#recording/english.ts";
import { asking } from "./english/asking.ts";
import { board } from "./english/board.ts";
import { complaint } from "./english/complaint.ts";
import { cups } from "./english/cups.ts";
import { doing } from "./english/doing.ts";
import { figures } from "./english/figures.ts";
import { flex } from "./english/flex.ts";
import { help } from "./english/help.ts";
import { levelNumbers } from "./english/level-numbers.ts";
import { levels } from "./english/levels.ts";
import { levelsMore } from "./english/levels-more.ts";
import { listening, training } from "./english/listening.ts";
import { marks } from "./english/marks.ts";
import { measure } from "./english/measure.ts";
import { noises } from "./english/noises.ts";
import { numbers } from "./english/numbers.ts";
import { plan } from "./english/plan.ts";
import { planFacts } from "./english/plan-facts.ts";
import { prove } from "./english/prove.ts";
import { proveBench } from "./english/prove-bench.ts";
import { returning } from "./english/returning.ts";
import { rig } from "./english/rig.ts";
import { round } from "./english/round.ts";
import { sessions } from "./english/sessions.ts";
import { sheet } from "./english/sheet.ts";
import { sounding } from "./english/sounding.ts";
import { sounds } from "./english/sounds.ts";
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
