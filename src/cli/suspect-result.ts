import type { Beliefs } from "#core/diagnosis/beliefs.ts";
import { questionsOf } from "#core/diagnosis/evidence.ts";
import type { Model } from "#core/diagnosis/model.ts";
import {
  type Derived,
  english,
  mendText,
  type Reason,
  type RigFault,
  reasonsFor,
  type Suspect,
  type Turning,
  turning,
} from "#core/index.ts";
import type { SuspectResult } from "./diagnosis-format.ts";
import { answerWords, askedWords, faultWords, inHundred } from "./words.ts";

/** A suspect with its members and its reasons, and what tells it from the `first` one, where it is another. */
export function suspectResult(
  derived: Derived,
  { group, probability }: Suspect,
  first: Suspect | undefined,
  position: string,
): SuspectResult {
  const { model, happenings, beliefs } = derived;
  const turn =
    first === undefined || first.group === group
      ? undefined
      : turning(model, first.group, group, position);
  return {
    group: groupIdOf(derived, group.faults),
    probability: shown(probability),
    faults: group.faults.map((fault) => ({
      id: fault.id,
      part: fault.part,
      place: fault.place,
      words: faultWords(model, fault),
      mend: mendText(english, model.rig, fault),
      seconds: fault.repair,
      probability: shown(chanceOf(beliefs, fault)),
    })),
    explanation: reasonsFor(model, group, happenings).map((reason) =>
      reasonResult(derived, reason),
    ),
    ...(turn === undefined ? {} : { apart: apartResult(model, turn) }),
  };
}

function apartResult(model: Model, { asked, instead }: Turning) {
  const questions = "position" in asked ? questionsOf(asked).map(({ name }) => name) : ["look"];
  const answers = instead.map((answer, at) =>
    answerWords(model, asked, questions[at] ?? "", [answer]),
  );
  return { asked, words: askedWords(model, asked), instead: [...instead], answers };
}

/** The id of the group that some faults are of, in the rig as drawn. */
export function groupIdOf({ groups }: Derived, faults: readonly RigFault[]): string {
  const [first] = faults;
  const home = groups.find((group) => first !== undefined && group.faults.includes(first));
  return (home?.faults[0] ?? first)?.id ?? "";
}

/** To a millionth: sums of many small numbers may come out a hair over one. */
export const shown = (probability: number): number =>
  Math.min(1, Math.max(0, Math.round(probability * 1e6) / 1e6));

/** How likely a fault is there now, over all sets that it is in. */
const chanceOf = ({ era, sets }: Beliefs, fault: RigFault): number =>
  era.branches
    .filter(({ faults }) => faults.includes(fault))
    .map(sets)
    .reduce(
      (all, { faults, probabilities }) =>
        probabilities.reduce((sum, one, at) => sum + (faults[at]?.includes(fault) ? one : 0), all),
      0,
    );

type ReasonResult = SuspectResult["explanation"][number];

const reasonResult = ({ model }: Derived, { asked, answers }: Reason): ReasonResult => ({
  asked,
  answers: answers.map((answer) => ({
    question: answer.question,
    words: reasonWords(model, asked, answer, answers.length > 1),
    predicted: answer.predicted,
    given: [...answer.given],
    likelihood: shown(answer.likelihood),
  })),
});

function reasonWords(
  model: Model,
  asked: Reason["asked"],
  { question, predicted, given, likelihood }: Reason["answers"][number],
  oneOfSeveral: boolean,
): string {
  const words = (answers: readonly string[]) => answerWords(model, asked, question, answers);
  const place = `${askedWords(model, asked)}${oneOfSeveral ? `, ${question}` : ""}`;
  return given.includes(predicted)
    ? `${place}: ${words(given)}; so it would be.`
    : `${place}: ${words(given)}; it would be: ${words([predicted])} (${inHundred(likelihood)} for what was said).`;
}
