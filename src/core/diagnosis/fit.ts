import { catalogue } from "#core/checks/catalogue.ts";
import type { EarCheckName } from "#core/checks/check.ts";
import { instrumentAt } from "#core/rig/rig.ts";
import type { Probability } from "#core/units/units.ts";
import type { Beliefs, WayNow } from "./beliefs.ts";
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
 * question, any may be the one that was meant. What comes and goes fits once some question was answered in two ways, and not before. What an instrument
 * measures fits, or its cause is not on the list.
 */
export function fitAt(model: Model, evidence: Evidence, beliefs: Beliefs, position: string): Fit {
  const best = likeliest(beliefs.ways(position));
  const measured = instrumentAt(model.rig, position) !== undefined;
  if (best === undefined || measured || unlisted(model, best)) return { fit: 1, worst: undefined };
  const asked = evidence.heard.filter((one) => isAsked(one) && one.position === position);
  const fits = asked.map((one) => ({
    one,
    fit: fitOf(model, one, model.tokens.at(best.token, one.channel)),
  }));
  const now = evidence.nowAt(position);
  const worst = fits
    .filter(({ one }) => one.channel === now)
    .reduce<Fitted | undefined>(
      (least, next) => (least === undefined || next.fit < least.fit ? next : least),
      undefined,
    );
  return {
    fit: isSteady(model, evidence, best, asked) ? 0 : poorest(fits, now),
    worst: worst && { check: checkOf(worst.one), times: worst.one.times },
  };
}

/**
 * How well all goes together that was answered now, or that was answered before the last move but for the worst of it: that may have been a
 * slip, and cannot be asked again.
 */
function poorest(fits: readonly Fitted[], now: number): Probability {
  const product = (some: readonly Fitted[]) => some.reduce((all, { fit }) => all * fit, 1);
  const before = fits.filter(({ one }) => one.channel !== now).sort((x, y) => x.fit - y.fit);
  return Math.min(product(fits.filter(({ one }) => one.channel === now)), product(before.slice(1)));
}

interface Fitted {
  readonly one: Heard;
  readonly fit: Probability;
}

/** Something that is said to come and go was answered the same way every time. */
function isSteady(
  { pool }: Model,
  { nowAt }: Evidence,
  best: WayNow,
  asked: readonly Heard[],
): boolean {
  const now = asked.filter(({ position, channel }) => channel === nowAt(position));
  return pool.comesAndGoes(best.behaviour) && now.every(({ said }) => said.size === 1);
}

/** A complaint is nobody's answer to a check, and cannot be asked for again. */
const isAsked = ({ question }: Heard): boolean =>
  catalogue.some(({ questions }) => questions.includes(question));

const unlisted = ({ pool }: Model, { behaviour }: WayNow): boolean =>
  pool.showings(behaviour).some(({ number }) => pool.behaviour(number).unlisted);

const likeliest = (ways: readonly WayNow[]): WayNow | undefined =>
  ways.reduce<WayNow | undefined>(
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
