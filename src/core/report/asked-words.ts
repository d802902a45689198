import type { Finding } from "#core/checks/finding.ts";
import { asItShouldBe, sightOf } from "#core/checks/look.ts";
import { answersTo } from "#core/checks/noise.ts";
import { twistAnswers } from "#core/checks/twist.ts";
import { questionsOf } from "#core/diagnosis/evidence.ts";
import type { Model } from "#core/diagnosis/model.ts";
import { clientId } from "#core/rig/rig.ts";
import { answerText } from "#core/words/answer-text.ts";
import type { Language } from "#core/words/language.ts";
import { seenWords } from "./fault-words.ts";
import { placeName, seatName } from "./names.ts";
import { triedWords } from "./noise-words.ts";

type Asked = Finding["asked"];

/** What is asked, and where: '2 reader, two knocks' or 'a look at the mixer'. */
export function askedWords(language: Language, { rig }: Model, asked: Asked): string {
  const { byHand, checks, report } = language;
  switch (asked.check) {
    case "look":
      return (asked.place === clientId ? byHand.ask : byHand.look)(
        placeName(language, rig, asked.place),
      );
    case "twist":
      return byHand.twist(placeName(language, rig, asked.part));
    case "continuity":
      return byHand.continuity(placeName(language, rig, asked.part), asked.from, asked.to);
    case "complaint":
      return report.at(seatName(rig, asked.position), byHand.complaint);
    case "matrix":
      return report.at(seatName(rig, asked.position), byHand.matrix);
    case "noise":
      return triedWords(language, rig, asked);
    default:
      return report.at(seatName(rig, asked.position), checks[asked.check].name);
  }
}

/** One of the questions of a check, by what it is called in the core. */
export const questionWords = ({ answers }: Language, question: string): string =>
  (answers.bursts as Readonly<Record<string, string>>)[question] ?? question;

/** What was answered to one question; all of its list is 'can't tell'. */
export function answerWords(
  language: Language,
  model: Model,
  asked: Asked,
  question: string,
  given: readonly string[],
): string {
  const all = listOf(model, asked, question);
  if (given.length === 0 || (given.length > 1 && given.length >= all.length))
    return language.answers.cannotTell;
  return language.report.or(given.map((one) => saidWords(language, model, asked, one)));
}

/** Every answer there is to a question. */
function listOf(model: Model, asked: Asked, question: string): readonly string[] {
  if (asked.check === "look")
    return model.looks.find(({ place }) => place === asked.place)?.answers ?? [];
  if (asked.check === "twist") return twistAnswers;
  if (asked.check === "matrix" || asked.check === "continuity") return [];
  if (asked.check === "noise") return answersTo(asked.trial.try);
  return questionsOf(asked).find(({ name }) => name === question)?.answers ?? [];
}

/** One answer. */
const saidWords = (language: Language, model: Model, asked: Asked, answer: string): string =>
  asked.check === "look" ? sightWords(language, model, answer) : answerText(language, answer);

/** What the eye saw, and where. */
function sightWords(language: Language, { rig, branches }: Model, answer: string): string {
  if (answer === asItShouldBe) return language.asItShouldBe;
  const fault = branches
    .flatMap(({ faults }) => faults)
    .find((one) => one.seen && sightOf(one) === answer);
  return fault === undefined ? answer : seenWords(language, rig, fault);
}
