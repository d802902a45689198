import { english as language } from "#core/words/english.ts";
import { board } from "./german/board.ts";
import { figures } from "./german/figures.ts";
import { listening, training } from "./german/listening.ts";
import { marks } from "./german/marks.ts";
import { plan } from "./german/plan.ts";
import { planFacts } from "./german/plan-facts.ts";
import { prove } from "./german/prove.ts";
import { proveBench } from "./german/prove-bench.ts";
import { sounds } from "./german/sounds.ts";
import type { Words } from "./use-words.ts";

/** All that is said behind the first screen, in German. */
export const words: Words = {
  language,
  board,
  figures,
  listening,
  training,
  marks,
  plan,
  planFacts,
  prove,
  proveBench,
  sounds,
};
