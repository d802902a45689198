import type { Doing } from "#core/diagnosis/offers.ts";
import { type Derived, english, type Move, type Standing } from "#core/index.ts";
import { askedWords } from "#core/report/asked-words.ts";
import { doText, mendWords } from "#core/report/do-text.ts";
import { sentence } from "#core/report/phrases.ts";
import { unsureWords } from "#core/report/reason-words.ts";
import type { NextResult, WeighedResult } from "./diagnosis-format.ts";

/** What a position needs now, in words and in seconds. */
export function nextResult({ model }: Derived, standing: Standing): NextResult {
  const { advice, leading, choice } = standing;
  switch (advice.advice) {
    case "healthy":
      return { next: "nothing", words: "Healthy: nothing found by these checks." };
    case "ask": {
      const { asked, seconds } = advice.option;
      return { next: "check", asked, words: sentence(askedWords(english, model, asked)), seconds };
    }
    case "do": {
      const { move, cures, seconds } = advice;
      return {
        next: "action",
        move: plain(move),
        cures,
        words: toDo(doText(english, model, move)),
        seconds,
      };
    }
    case "verdict": {
      const { sure, fits, mend } = advice;
      const [fault] = leading?.group.faults ?? [];
      const unsure = sure ? [] : [`Not sure. ${unsureWords(english, advice, choice)}`];
      const repair =
        fault === undefined ? [] : [toDo(mendWords(english, model, mend?.move, fault))];
      return {
        next: "verdict",
        sure,
        fits,
        ...(mend === undefined ? {} : { move: plain(mend.move), seconds: mend.seconds }),
        words: [...unsure, ...repair].join(" "),
      };
    }
  }
}

/** Something to do with one's hands: volume down first. */
const toDo = (text: string): string => `${english.volumeFirst}. ${sentence(text)}`;

/** The same move, as the format has it. */
const plain = (move: Move) =>
  move.move === "exchanged" ? { ...move, parts: [...move.parts] as [string, string] } : move;

/** What else was weighed, once something seemed wrong. */
export const weighedResult = (
  { model }: Derived,
  { seconds, others }: NonNullable<Standing["choice"]>,
): WeighedResult => ({
  seconds,
  others: others.map(({ doing, cost, seconds: expected }) => ({
    words: sentence(doingWords(model, doing)),
    seconds: cost,
    expected,
  })),
});

const doingWords = (model: Derived["model"], doing: Doing): string =>
  doing.do === "ask" ? askedWords(english, model, doing.asked) : doText(english, model, doing.move);
