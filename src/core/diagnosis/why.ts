import { type Answered, type Asked, type Happening, isAnswered } from "#core/checks/finding.ts";
import { predictLook, sightsOf } from "#core/checks/look.ts";
import { predictTwist, twistAnswers } from "#core/checks/twist.ts";
import type { Probability } from "#core/units/units.ts";
import { questionsOf } from "./evidence.ts";
import type { Group } from "./groups.ts";
import type { Model } from "./model.ts";

/** One finding, against what a suspect would have made likely. */
export interface Reason {
  readonly asked: Asked;
  /** For each question: the likeliest answer under the suspect alone, what was answered, and how likely that was. */
  readonly answers: readonly {
    readonly question: string;
    readonly predicted: string;
    readonly given: readonly string[];
    readonly likelihood: Probability;
  }[];
}

/** Predicted against given, for the first fault of a group standing alone; findings from before the last move speak of before. */
export const reasonsFor = (
  model: Model,
  group: Group,
  happenings: readonly Happening[],
): readonly Reason[] =>
  happenings
    .slice(happenings.findLastIndex(({ kind }) => kind === "move") + 1)
    .flatMap((happening) =>
      happening.kind === "finding" && isAnswered(happening.finding)
        ? [reason(model, group, happening.finding)]
        : [],
    );

/** What would be asked, and how likely each answer is under the first fault of a group. */
interface Prediction {
  readonly question: string;
  readonly answers: readonly string[];
  readonly chances: Float64Array;
}

function reason(model: Model, group: Group, { asked, results }: Answered): Reason {
  const predictions = predicted(model, group, asked);
  return {
    asked,
    answers: predictions.map(({ question, answers, chances }, at) => {
      const given = results[at] ?? answers;
      return {
        question,
        predicted: answers[chances.indexOf(Math.max(...chances))] ?? "",
        given,
        likelihood: chances.reduce(
          (sum, p, index) => sum + (given.includes(answers[index] ?? "") ? p : 0),
          0,
        ),
      };
    }),
  };
}

function predicted(model: Model, group: Group, asked: Asked): readonly Prediction[] {
  if (asked.check === "look") return sight(model, group, asked.place);
  if (asked.check !== "twist") return sound(model, group, asked);
  const [fault] = group.faults;
  const here = fault?.part === asked.part ? [fault] : [];
  return [{ question: "twist", answers: twistAnswers, chances: predictTwist(here) }];
}

function sight(model: Model, { faults }: Group, place: string): readonly Prediction[] {
  const look = model.looks.find((one) => one.place === place);
  if (look === undefined) return []; // the drawing has changed since
  const chances = predictLook(look, sightsOf(look, faults.slice(0, 1)));
  return [{ question: "look", answers: look.answers, chances }];
}

function sound(
  model: Model,
  { faults }: Group,
  asked: Extract<Asked, { readonly position: string }>,
): readonly Prediction[] {
  const way = model.under(asked.position, faults.slice(0, 1));
  return questionsOf(asked).map((question) => ({
    question: question.name,
    answers: question.answers,
    chances: model.predict(question, asked.position)(way),
  }));
}
