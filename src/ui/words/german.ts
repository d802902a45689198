import { english as language } from "#core/words/english.ts";
import { board } from "./german/board.ts";
import { figures } from "./german/figures.ts";
import { marks } from "./german/marks.ts";
import { plan } from "./german/plan.ts";
import { planFacts } from "./german/plan-facts.ts";
import { prove } from "./german/prove.ts";
import { proveBench } from "./german/prove-bench.ts";
import type { Words } from "./use-words.ts";

/** All that is said behind the first screen, in German. */
export const words: Words = {
  language,
  board,
  figures,
  marks,
  plan,
  planFacts,
  prove,
  proveBench,
};
