import { catalogue } from "#core/checks/catalogue.ts";
import type { Asked } from "#core/checks/finding.ts";
import { predictLook, sightsOf } from "#core/checks/look.ts";
import type { Seconds } from "#core/units/units.ts";
import { walk } from "./asking.ts";
import type { Group } from "./groups.ts";
import type { Model } from "./model.ts";

/** More than this much of the answers lies apart, from zero to one. */
const wellApart = 0.5;

/** What would change a verdict: a check, and the answers to it that would speak for the other group. */
export interface Turning {
  readonly asked: Asked;
  readonly instead: readonly { readonly question: string; readonly answer: string }[];
}

/** The cheapest check that tells two groups apart, and what would be answered under the second; nothing where none does. */
export function turning(model: Model, a: Group, b: Group, position: string): Turning | undefined {
  const [cheapest] = [...byEar(model, a, b, position), ...byEye(model, a, b)]
    .filter(({ apart }) => apart > wellApart)
    .sort((first, second) => first.seconds - second.seconds);
  return cheapest && { asked: cheapest.asked, instead: cheapest.instead };
}

interface Offer extends Turning {
  readonly seconds: Seconds;
  readonly apart: number;
}

const likeliest = (answers: readonly string[], chances: Float64Array): string =>
  answers[chances.indexOf(Math.max(...chances))] ?? "";

const byEar = (model: Model, a: Group, b: Group, position: string): readonly Offer[] =>
  model.root.positions.flatMap((at) => {
    const [first, second] = [a, b].map(({ faults }) => model.under(at, faults.slice(0, 1)));
    if (first === undefined || second === undefined || first === second) return [];
    return catalogue.map(({ name, seconds, questions }) => ({
      asked: { check: name, position: at },
      seconds: seconds + (at === position ? 0 : walk),
      apart: Math.max(
        ...questions.map((question) => {
          const predict = model.predict(question, at);
          return distance(predict(first), predict(second));
        }),
      ),
      instead: questions.map((question) => ({
        question: question.name,
        answer: likeliest(question.answers, model.predict(question, at)(second)),
      })),
    }));
  });

const byEye = (model: Model, a: Group, b: Group): readonly Offer[] =>
  model.looks.map((look) => {
    const [first, second] = [a, b].map(({ faults }) =>
      predictLook(look, sightsOf(look, faults.slice(0, 1))),
    );
    return {
      asked: { check: "look", place: look.place },
      seconds: look.seconds,
      apart: first && second ? distance(first, second) : 0,
      instead: second ? [{ question: "look", answer: likeliest(look.answers, second) }] : [],
    };
  });

/** How much of the answers lies apart: zero where they agree, one where they share none. */
const distance = (p: Float64Array, q: Float64Array): number =>
  p.reduce((sum, one, at) => sum + Math.abs(one - (q[at] ?? 0)), 0) / 2;
