import type { Verdict } from "#core/diagnosis/advice.ts";
import type { Chosen } from "#core/diagnosis/choice.ts";
import type { Model } from "#core/diagnosis/model.ts";
import type { Turning } from "#core/diagnosis/turning.ts";
import type { Reason } from "#core/diagnosis/why.ts";
import type { Language } from "#core/words/language.ts";
import { answerWords, askedWords, questionWords } from "./asked-words.ts";
import { inHundred } from "./phrases.ts";

/** What a suspect would have made likely against what was said, one sentence for each question. */
export const reasonWords = (
  language: Language,
  model: Model,
  { asked, answers }: Reason,
): readonly string[] =>
  answers.map(({ question, predicted, given, likelihood }) => {
    const { report } = language;
    const words = (some: readonly string[]) => answerWords(language, model, asked, question, some);
    const check = askedWords(language, model, asked);
    const which =
      answers.length > 1 ? report.ofQuestion(check, questionWords(language, question)) : check;
    const told = report.answered(which, words(given));
    return given.includes(predicted)
      ? report.asExpected(told)
      : report.otherwise(told, words([predicted]), inHundred(language, likelihood));
  });

/** The answers that would change a verdict. */
export const insteadWords = (
  language: Language,
  model: Model,
  { asked, instead }: Turning,
): readonly string[] =>
  instead.map(({ question, answer }) => answerWords(language, model, asked, question, [answer]));

/** What would change a verdict: a check, and what would be answered then. Without its full stop. */
export const turningWords = (language: Language, model: Model, turning: Turning): string =>
  language.report.turning(
    askedWords(language, model, turning.asked),
    language.report.inTurn(insteadWords(language, model, turning)),
  );

/** Why a verdict is not sure, in a sentence. */
export const unsureWords = (
  { report }: Language,
  { fits }: Verdict,
  choice: Chosen | undefined,
): string => {
  if (!fits) return report.unfit;
  return choice?.best?.doing.do === "mend" ? report.repairSooner : report.nothingWorth;
};
