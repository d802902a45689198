import type { Doing } from "#core/diagnosis/offers.ts";
import {
  type Advice,
  type Derived,
  english,
  type Move,
  mendText,
  type Standing,
} from "#core/index.ts";
import { moveText } from "#core/words/move-text.ts";
import type { NextResult, WeighedResult } from "./diagnosis-format.ts";
import { askedWords, sentence } from "./words.ts";

/** What a position needs now, in words and in seconds. */
export function nextResult({ model }: Derived, standing: Standing): NextResult {
  const { advice, leading, choice } = standing;
  switch (advice.advice) {
    case "healthy":
      return { next: "nothing", words: "Healthy: nothing found by these checks." };
    case "ask": {
      const { asked, seconds } = advice.option;
      return { next: "check", asked, words: sentence(askedWords(model, asked)), seconds };
    }
    case "do": {
      const { move, cures } = advice;
      const words = `${english.volumeFirst}. ${sentence(moveText(english, model.rig, move))}`;
      return {
        next: "action",
        move: plain(move),
        cures,
        words,
        seconds: choice?.best?.cost ?? toTurn,
      };
    }
    case "verdict": {
      const { sure, fits } = advice;
      const [fault] = leading?.group.faults ?? [];
      const mend = fault === undefined ? "" : sentence(mendText(english, model.rig, fault));
      return {
        next: "verdict",
        sure,
        fits,
        words: [unsure(advice), `${english.volumeFirst}.`, mend]
          .filter((one) => one !== "")
          .join(" "),
        seconds: fault?.repair ?? 0,
      };
    }
  }
}

/** To turn headphones round, the one move that is asked for without being weighed. Handbook, section 8. */
const toTurn = 8;

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
  doing.do === "ask" ? askedWords(model, doing.asked) : moveText(english, model.rig, doing.move);

function unsure({ sure, fits }: Extract<Advice, { readonly advice: "verdict" }>): string {
  if (sure) return "";
  return fits
    ? "Not sure: nothing on offer is worth its seconds."
    : "Not sure: not all that was answered goes together.";
}
