import { catalogue } from "#core/checks/catalogue.ts";
import type { EarCheckName } from "#core/checks/check.ts";
import type { Way } from "#core/inference/spread.ts";
import type { Probability } from "#core/units/units.ts";
import type { Beliefs } from "./beliefs.ts";
import type { Evidence, Heard } from "./evidence.ts";
import type { Model } from "./model.ts";

/** How well the answers at a position go with what is most believed of it. */
export interface Fit {
  /** How much less likely the answers are than those it makes likeliest; one is a perfect fit. */
  readonly fit: Probability;
  /** The check answered least as expected, and how often it was asked. */
  readonly worst: { readonly check: EarCheckName; readonly times: number } | undefined;
}

/**
 * The best explanation on the list may still be a poor one. A corrected slip does not spoil a fit: of all answers given to one
 * question, any may be the one that was meant. What comes and goes fits once some question was answered in two ways, and not before.
 */
export function fitAt(model: Model, evidence: Evidence, beliefs: Beliefs, position: string): Fit {
  const best = likeliest(beliefs.ways(position));
  if (best === undefined || unlisted(model, best)) return { fit: 1, worst: undefined };
  const fits = evidence.heard
    .filter(
      (one) =>
        isAsked(one) && one.position === position && one.channel === evidence.nowAt(position),
    )
    .map((one) => ({ one, fit: fitOf(model, one, best.behaviour) }));
  const worst = fits.reduce<(typeof fits)[number] | undefined>(
    (least, next) => (least === undefined || next.fit < least.fit ? next : least),
    undefined,
  );
  const steady = comesAndGoes(model, best) && fits.every(({ one }) => one.said.size === 1);
  return {
    fit: steady ? 0 : fits.reduce((product, { fit }) => product * fit, 1),
    worst: worst && { check: checkOf(worst.one), times: worst.one.times },
  };
}

/** A complaint is nobody's answer to a check, and cannot be asked for again. */
const isAsked = ({ question }: Heard): boolean =>
  catalogue.some(({ questions }) => questions.includes(question));

const comesAndGoes = ({ pool }: Model, { behaviour }: Way): boolean => pool.comesAndGoes(behaviour);

const unlisted = ({ pool }: Model, { behaviour }: Way): boolean =>
  pool.showings(behaviour).some(({ number }) => pool.behaviour(number).unlisted);

const likeliest = (ways: readonly Way[]): Way | undefined =>
  ways.reduce<Way | undefined>(
    (best, way) => (best === undefined || way.probability > best.probability ? way : best),
    undefined,
  );

function fitOf(model: Model, { question, position, said }: Heard, behaviour: number): Probability {
  const chances = model.predict(question, position)(behaviour);
  const given = question.answers.map((answer, at) => (said.has(answer) ? (chances[at] ?? 0) : 0));
  const meant = given.reduce((sum, p) => sum + p, 0);
  return Math.min(1, meant / Math.max(...chances));
}

function checkOf({ question }: Heard): EarCheckName {
  const check = catalogue.find(({ questions }) => questions.includes(question));
  if (check === undefined) throw new Error(`no check asks '${question.name}'`);
  return check.name;
}
