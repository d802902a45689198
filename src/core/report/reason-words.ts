import type { Verdict } from "#core/diagnosis/advice.ts";
import type { Chosen } from "#core/diagnosis/choice.ts";
import type { Model } from "#core/diagnosis/model.ts";
import type { Turning } from "#core/diagnosis/turning.ts";
import type { Reason } from "#core/diagnosis/why.ts";
import { answerWords, askedWords } from "./asked-words.ts";
import { inHundred } from "./phrases.ts";

/** What a suspect would have made likely against what was said, one sentence for each question. */
export const reasonWords = (model: Model, { asked, answers }: Reason): readonly string[] =>
  answers.map(({ question, predicted, given, likelihood }) => {
    const words = (some: readonly string[]) => answerWords(model, asked, question, some);
    const which = answers.length > 1 ? `, ${question}` : "";
    const place = `${askedWords(model, asked)}${which}: ${words(given)}`;
    return given.includes(predicted)
      ? `${place}; so it would be.`
      : `${place}; it would be: ${words([predicted])} (${inHundred(likelihood)} for what was said).`;
  });

/** The answers that would change a verdict. */
export const insteadWords = (model: Model, { asked, instead }: Turning): readonly string[] =>
  instead.map(({ question, answer }) => answerWords(model, asked, question, [answer]));

/** What would change a verdict: a check, and what would be answered then. Without its full stop. */
export const turningWords = (model: Model, turning: Turning): string =>
  `${askedWords(model, turning.asked)}, if the answer is: ${insteadWords(model, turning).join(", then ")}`;

/** Why a verdict is not sure, in a sentence. */
export const unsureWords = ({ fits }: Verdict, choice: Chosen | undefined): string => {
  if (!fits) return "Not all that was answered goes together.";
  return choice?.best?.doing.do === "mend"
    ? "No check here is worth its seconds any more: the repair is tried sooner."
    : "Nothing on offer is worth its seconds.";
};
