import { catalogue } from "#core/checks/catalogue.ts";
import type { EarCheck } from "#core/checks/check.ts";
import { given, slip } from "#core/checks/slips.ts";
import { both } from "#core/inference/information.ts";
import type { Seconds } from "#core/units/units.ts";
import type { Evidence } from "./evidence.ts";
import type { Model } from "./model.ts";

/** To get to another seat, and the headphones on. Handbook, section 8. */
export const walk: Seconds = 10;

/** One probability for each answer to a check as a whole, from what the way does and what was answered already. */
export function answersTo(
  model: Model,
  { heard, nowAt }: Evidence,
  behaviour: number,
  position: string,
  check: EarCheck,
): Float64Array {
  const before = heard.filter(
    (one) =>
      one.position === position &&
      one.channel === nowAt(position) &&
      check.questions.includes(one.question),
  );
  if (before.length === 0) return model.answers(check, position)(behaviour);
  return check.questions
    .map((question) => {
      const fresh = model.predict(question, position)(behaviour);
      const weights = before.find((one) => one.question === question)?.weights;
      return given(weights === undefined ? fresh : weighed(fresh, weights), slip);
    })
    .reduce(both);
}

/** The same judgement as before, so far as the answers given tell which it was. */
function weighed(fresh: Float64Array, weights: Float64Array): Float64Array {
  const product = fresh.map((p, at) => p * (weights[at] ?? 1));
  const all = product.reduce((sum, p) => sum + p, 0);
  return all > 0 ? product.map((p) => p / all) : fresh;
}

/** The position to go to for a second opinion: one already begun, else the next not heard from, else the next; never one where nobody is. */
export function neighbour(model: Model, evidence: Evidence, position: string): string | undefined {
  const all = model.root.positions;
  const at = all.indexOf(position);
  const others = [...all.slice(at + 1), ...all.slice(0, at)].filter(
    (one) => !evidence.absent.has(one),
  );
  const asked = (one: string) =>
    evidence.heard.filter((each) => each.position === one && each.channel === evidence.nowAt(one))
      .length;
  const whole = catalogue.filter(({ required }) => required).flatMap((check) => check.questions);
  const begun = others.find((one) => asked(one) > 0 && asked(one) < whole.length);
  return begun ?? others.find((one) => asked(one) === 0) ?? others[0];
}
