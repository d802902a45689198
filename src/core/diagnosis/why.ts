import { catalogue, earCheck } from "#core/checks/catalogue.ts";
import type { Asked, Finding, Happening } from "#core/checks/finding.ts";
import { asItShouldBe, predictLook } from "#core/checks/look.ts";
import type { Probability } from "#core/units/units.ts";
import { differs } from "./answers.ts";
import { type Group, wayUnder } from "./groups.ts";
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

/** Predicted against given, finding by finding, for the likeliest fault of a group standing alone. */
export function reasonsFor(
  model: Model,
  group: Group,
  happenings: readonly Happening[],
): readonly Reason[] {
  return happenings.flatMap((happening) =>
    happening.kind === "finding" ? [reason(model, group, happening.finding)] : [],
  );
}

function reason(model: Model, { faults, branch }: Group, { asked, results }: Finding): Reason {
  const [fault] = faults;
  const there = fault === undefined ? [] : [fault];
  const line = (
    question: string,
    answers: readonly string[],
    chances: Float64Array,
    at: number,
  ) => {
    const given = results[at] ?? answers;
    return {
      question,
      predicted: answers[chances.indexOf(Math.max(...chances))] ?? "",
      given,
      likelihood: answers.reduce(
        (sum, one, index) => sum + (given.includes(one) ? (chances[index] ?? 0) : 0),
        0,
      ),
    };
  };
  if (asked.check === "look") {
    const look = model.looks.find(({ place }) => place === asked.place);
    const answers = look?.answers ?? [asItShouldBe];
    const chances = look
      ? predictLook(
          look,
          there.map(({ id }) => id),
        )
      : Float64Array.of(1);
    return { asked, answers: [line("look", answers, chances, 0)] };
  }
  const onTheWay = model.wayTo(asked.position).includes(branch);
  const way = onTheWay
    ? wayUnder(model, asked.position, branch, there)
    : model.healthy(asked.position);
  return {
    asked,
    answers: earCheck(asked.check).questions.map((question, at) =>
      line(question.name, question.answers, model.predict(question, asked.position)(way), at),
    ),
  };
}

/** The cheapest check on offer that two groups would answer differently, or nothing. */
export function separating(model: Model, a: Group, b: Group, position: string): Asked | undefined {
  const [first, second] = [a.faults[0], b.faults[0]];
  if (first === undefined || second === undefined) return undefined;
  const looked = model.looks.find(
    ({ answers }) =>
      answers.includes(first.id) !== answers.includes(second.id) ||
      (first.seen && answers.includes(first.id)),
  );
  const at = [position, ...model.root.positions].find((one) => {
    const way = (group: Group, fault: typeof first) =>
      model.wayTo(one).includes(group.branch)
        ? wayUnder(model, one, group.branch, [fault])
        : model.healthy(one);
    return differs(model.predict, one, way(a, first), way(b, second));
  });
  const heard = at === undefined ? undefined : byEar(model, at, a, b);
  if (heard === undefined) return looked && { check: "look", place: looked.place };
  return heard;
}

/** The check by ear whose answers differ most between two groups at a position. */
function byEar(model: Model, position: string, a: Group, b: Group): Asked | undefined {
  const way = (group: Group) =>
    model.wayTo(position).includes(group.branch)
      ? wayUnder(model, position, group.branch, group.faults.slice(0, 1))
      : model.healthy(position);
  const [first, second] = [way(a), way(b)];
  const distances = catalogue.map(({ name, questions }) => ({
    name,
    distance: Math.max(
      ...questions.map((question) => {
        const [p, q] = [
          model.predict(question, position)(first),
          model.predict(question, position)(second),
        ];
        return p.reduce((sum, one, at) => sum + Math.abs(one - (q[at] ?? 0)), 0);
      }),
    ),
  }));
  const best = distances.reduce((most, one) => (one.distance > most.distance ? one : most));
  return { check: best.name, position };
}
