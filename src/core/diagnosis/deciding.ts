import { earCheck } from "#core/checks/catalogue.ts";
import type { Move } from "#core/rig/moves.ts";
import { instrumentAt } from "#core/rig/rig.ts";
import type { Probability, Seconds } from "#core/units/units.ts";
import type { Beliefs } from "./beliefs.ts";
import { type Chosen, choiceAt } from "./choice.ts";
import type { Evidence } from "./evidence.ts";
import { fitAt } from "./fit.ts";
import type { Model } from "./model.ts";
import { type Option, optionsAt } from "./options.ts";
import { fitEnough, isTurnedAndHeard, timesMeasured, unanswered, wellBeside } from "./so-far.ts";
import type { Suspect } from "./suspects.ts";
import { turn } from "./trials.ts";

/** How sure a verdict is. */
const sureEnough: Probability = 0.95;
/** A check that tells less than this a second is not worth asking. */
const worth = 0.002;

/** What a position needs next. */
export type Decision =
  | { readonly advice: "ask"; readonly option: Option }
  /** A move that tells something, or that may cure and costs little; then to hear again. */
  | {
      readonly advice: "do";
      readonly move: Move;
      readonly cures: boolean;
      readonly seconds: Seconds;
    }
  | { readonly advice: "healthy" }
  | Ending;

/**
 * Nothing is left to ask. Sure: the leading suspect has 95 %. Not sure: no check on offer is worth its seconds, or, where it does not
 * fit, the answers go with nothing on the list.
 */
export interface Ending {
  readonly advice: "verdict";
  readonly sure: boolean;
  readonly fits: boolean;
}

const unsure: Ending = { advice: "verdict", sure: false, fits: true };

/** A position, and all that decisions about it are made from. */
interface Place {
  readonly model: Model;
  readonly evidence: Evidence;
  readonly beliefs: Beliefs;
  readonly position: string;
}

/** What a position needs next, and what was weighed where something seems wrong. */
export function decisionAt(
  place: Place,
  suspects: readonly Suspect[],
  trouble: Probability,
): { readonly decision: Decision; readonly choice: Chosen | undefined } {
  const { model, evidence, beliefs, position } = place;
  const missing = unanswered(model, evidence, position);
  const end = settled(place, suspects, trouble, missing);
  const decided = turnedBack(place) ?? (end && heardBetween(end, place));
  if (decided !== undefined) return { decision: decided, choice: undefined };
  if (missing.length > 0 && (trouble < 0.5 || isMeasured(place)))
    return { decision: heardNext(place, missing), choice: undefined };
  if (isMeasured(place) && timesMeasured(evidence, position) < mostMeasured)
    return { decision: heardFirst(place), choice: undefined };
  const well = wellBeside(model, evidence, beliefs, position);
  const choice = choiceAt(model, evidence, beliefs, position, well);
  return { decision: heardBetween(chosen(choice), place) ?? heardFirst(place), choice };
}

/** An instrument that measures again finds a contact that comes and goes; after so many times, nothing more. */
const mostMeasured = 3;

const isMeasured = ({ model, position }: Place): boolean =>
  instrumentAt(model.rig, position) !== undefined;

const turnedBack = ({ evidence, position }: Place): Decision | undefined =>
  isTurnedAndHeard(evidence, position)
    ? { advice: "do", move: { move: "turned round", position }, cures: false, seconds: turn }
    : undefined;

/** A decision that may follow at once: after a move one hears what it did before the next. */
function heardBetween(decision: Decision, { evidence, position }: Place): Decision | undefined {
  const { heard, measured, era, nowAt } = evidence;
  const now = nowAt(position);
  const quiet = ![...heard, ...measured].some(
    (one) => one.position === position && one.channel === now,
  );
  return decision.advice !== "ask" && era.course.now > 0 && quiet ? undefined : decision;
}

const isHere = (asked: Option["asked"], position: string): boolean =>
  "position" in asked && asked.position === position;

/** What tells most of all that can be heard at the position. */
function heardFirst({ model, evidence, beliefs, position }: Place): Decision {
  const options = optionsAt(model, evidence, beliefs, position);
  const option = bestOf(options.filter(({ asked }) => isHere(asked, position)));
  return option === undefined ? unsure : { advice: "ask", option };
}

/** A repair that costs no more than this is tried without a verdict. */
const cheap: Seconds = 30;

/** What was chosen, as a decision. */
function chosen({ best }: Chosen): Decision {
  if (best === undefined) return unsure;
  const { doing, cost } = best;
  if (doing.do === "ask")
    return { advice: "ask", option: { asked: doing.asked, bits: 0, seconds: cost } };
  if (doing.do === "mend" && cost > cheap) return unsure;
  return { advice: "do", move: doing.move, cures: doing.do === "mend", seconds: cost };
}

/** Answers less likely than this, against the likeliest, are no fit. */
const poorFit: Probability = 0.02;

/** A position that needs no more questions, or only to be asked the strangest one once more. */
function settled(
  { model, evidence, beliefs, position }: Place,
  [first]: readonly Suspect[],
  trouble: Probability,
  missing: readonly string[],
): Decision | undefined {
  const healthy = missing.length === 0 && trouble < fitEnough;
  if (!healthy && (first?.probability ?? 0) < sureEnough) return undefined;
  const { fit, worst } = fitAt(model, evidence, beliefs, position);
  if (fit >= poorFit)
    return healthy ? { advice: "healthy" } : { advice: "verdict", sure: true, fits: true };
  if (worst === undefined || worst.times > 1)
    return { advice: "verdict", sure: false, fits: false };
  const { name, seconds } = earCheck(worst.check);
  return { advice: "ask", option: { asked: { check: name, position }, bits: 0, seconds } };
}

/**
 * While nothing points to trouble: what tells most for its seconds; a required check where nothing tells enough; and else an end. A position
 * is heard before anybody gets up to look.
 */
function heardNext(
  { model, evidence, beliefs, position }: Place,
  missing: readonly string[],
): Decision {
  const options = optionsAt(model, evidence, beliefs, position).filter(
    ({ asked }) => asked.check !== "look",
  );
  const best = bestOf(options);
  if (best !== undefined && best.bits / best.seconds >= worth)
    return { advice: "ask", option: best };
  const due = bestOf(
    options.filter(({ asked }) => isHere(asked, position) && missing.includes(asked.check)),
  );
  return due === undefined ? unsure : { advice: "ask", option: due };
}

/** The option that tells most a second. */
const bestOf = (options: readonly Option[]): Option | undefined =>
  options.reduce<Option | undefined>(
    (best, one) =>
      best === undefined || one.bits / one.seconds > best.bits / best.seconds ? one : best,
    undefined,
  );
