import { earCheck } from "#core/checks/catalogue.ts";
import type { Asked } from "#core/checks/finding.ts";
import type { Move } from "#core/rig/moves.ts";
import type { Probability, Seconds } from "#core/units/units.ts";
import type { Beliefs } from "./beliefs.ts";
import { type Chosen, choiceAt } from "./choice.ts";
import type { Evidence } from "./evidence.ts";
import { isUnlisted } from "./fault-sets.ts";
import { type Fit, fitAt } from "./fit.ts";
import type { Group } from "./groups.ts";
import type { Model } from "./model.ts";
import { type Option, optionsAt } from "./options.ts";
import { fitEnough, isTurnedAndHeard, living, unanswered, wellBeside } from "./so-far.ts";
import { culpritsOf, type Suspect, suspectsOf, troubleAt, unheardAt } from "./suspects.ts";

/** How sure a verdict is. */
const sureEnough: Probability = 0.95;
/** A check that tells less than this a second is not worth asking. */
const worth = 0.002;

/** What a position needs now. */
export type Advice =
  | { readonly advice: "ask"; readonly option: Option }
  /** A move that tells something, or that may cure and costs little; then to hear again. */
  | { readonly advice: "do"; readonly move: Move; readonly cures: boolean }
  | { readonly advice: "healthy" }
  /**
   * Sure: its leading suspect has 95 %. Not sure: nothing on offer is worth its seconds, or, where it does not fit, the answers go
   * with nothing on the list.
   */
  | { readonly advice: "verdict"; readonly sure: boolean; readonly fits: boolean };

/** What is known of one position, and what to do about it. */
export interface Standing {
  readonly position: string;
  readonly trouble: Probability;
  /** How likely something is wrong that cannot be heard: it is never named, and listed under 'not tested'. */
  readonly unheard: Probability;
  readonly suspects: readonly Suspect[];
  /** What a move took away or laid aside, that had been wrong here. */
  readonly culprits: readonly Suspect[];
  /** Whom a verdict names: the likeliest, or 'something not on the list' where the answers go with none that is likely. */
  readonly leading: Suspect | undefined;
  readonly advice: Advice;
  /** What was weighed once something seemed wrong, the cheapest first: why this next. */
  readonly choice: Chosen | undefined;
}

/** Less likely than this, or after so many, and a suspect is not shown. */
const worthShowing: Probability = 0.003;
const mostShown = 5;

/** The suspects a verdict shows: whom it names, then those that are not ruled out. */
export function shownIn({ leading, suspects }: Standing): readonly Suspect[] {
  const others = suspects.filter((one) => one !== leading && one.probability >= worthShowing);
  return [...(leading === undefined ? [] : [leading]), ...others.slice(0, mostShown)];
}

/** The standing of one position: how likely trouble is there, who is suspected, what to do next. */
export function standingAt(
  model: Model,
  groups: readonly Group[],
  evidence: Evidence,
  beliefs: Beliefs,
  position: string,
): Standing {
  const suspects = suspectsOf(living(groups, evidence, position), beliefs);
  const trouble = troubleAt(model, beliefs, position);
  const missing = unanswered(evidence, position);
  const fit = fitAt(model, evidence, beliefs, position);
  const end = settle(trouble, suspects, missing, fit, position);
  const settled = turnedBack(evidence, position) ?? (end && heardBetween(end, evidence, position));
  const listening = missing.length > 0 && trouble < 0.5;
  const choice =
    settled === undefined && !listening
      ? choiceAt(model, evidence, beliefs, position, wellBeside(model, evidence, beliefs, position))
      : undefined;
  const advice =
    settled ??
    (choice === undefined
      ? next(heardFirst(optionsAt(model, evidence, beliefs, position)), position, missing)
      : (heardBetween(chosen(choice), evidence, position) ??
        firstHeard(model, evidence, beliefs, position)));
  return {
    position,
    trouble,
    get unheard() {
      return unheardAt(model, beliefs, position); // only when it is asked for: it looks at everything that may be together
    },
    suspects,
    culprits: culpritsOf(groups, beliefs, position),
    leading: leadingOf(suspects, advice),
    advice,
    choice,
  };
}

const turnedBack = (evidence: Evidence, position: string): Advice | undefined =>
  isTurnedAndHeard(evidence, position)
    ? { advice: "do", move: { move: "turned round", position }, cures: false }
    : undefined;

/** Advice that may follow at once: after a move one hears what it did before the next. */
function heardBetween(advice: Advice, { heard, moves, nowAt }: Evidence, position: string) {
  const now = nowAt(position);
  const quiet = !heard.some((one) => one.position === position && one.channel === now);
  return advice.advice !== "ask" && moves.length > 0 && quiet ? undefined : advice;
}

/** What tells most of all that can be heard at a position. */
function firstHeard(model: Model, evidence: Evidence, beliefs: Beliefs, position: string): Advice {
  const here = optionsAt(model, evidence, beliefs, position).filter(
    ({ asked }) => "position" in asked && asked.position === position,
  );
  const option = bestOf(here);
  return option === undefined
    ? { advice: "verdict", sure: false, fits: true }
    : { advice: "ask", option };
}

/** A repair that costs no more than this is tried without a verdict. */
const cheap: Seconds = 30;

/** What was chosen, as advice. */
function chosen({ best }: Chosen): Advice {
  if (best === undefined) return { advice: "verdict", sure: false, fits: true };
  const { doing, cost } = best;
  if (doing.do === "ask")
    return { advice: "ask", option: { asked: doing.asked, bits: 0, seconds: cost } };
  if (doing.do === "mend" && cost > cheap) return { advice: "verdict", sure: false, fits: true };
  return { advice: "do", move: doing.move, cures: doing.do === "mend" };
}

function leadingOf(suspects: readonly Suspect[], advice: Advice): Suspect | undefined {
  const [first] = suspects;
  if (advice.advice !== "verdict" || advice.fits || (first?.probability ?? 0) > 0.5) return first;
  return suspects.find(({ group }) => group.faults.some(isUnlisted)) ?? first;
}

/** While nothing points to trouble, a position is heard before anybody gets up to look. */
const heardFirst = (options: readonly Option[]): readonly Option[] =>
  options.filter(({ asked }) => asked.check !== "look");

/** Answers less likely than this, against the likeliest, are no fit. */
const poorFit: Probability = 0.02;

/** A position that needs no more questions, or only to be asked the strangest one once more. */
function settle(
  trouble: Probability,
  [first]: readonly Suspect[],
  missing: readonly string[],
  { fit, worst }: Fit,
  position: string,
): Advice | undefined {
  const healthy = missing.length === 0 && trouble < fitEnough;
  if (!healthy && (first?.probability ?? 0) < sureEnough) return undefined;
  if (fit >= poorFit)
    return healthy ? { advice: "healthy" } : { advice: "verdict", sure: true, fits: true };
  if (worst === undefined || worst.times > 1)
    return { advice: "verdict", sure: false, fits: false };
  const { name, seconds } = earCheck(worst.check);
  return { advice: "ask", option: { asked: { check: name, position }, bits: 0, seconds } };
}

/** What tells most for its seconds; a required check where nothing tells enough; and else an end. */
function next(options: readonly Option[], position: string, missing: readonly string[]): Advice {
  const best = bestOf(options);
  if (best !== undefined && best.bits / best.seconds >= worth)
    return { advice: "ask", option: best };
  const due = bestOf(options.filter(({ asked }) => isDue(asked, position, missing)));
  return due === undefined
    ? { advice: "verdict", sure: false, fits: true }
    : { advice: "ask", option: due };
}

const isDue = (asked: Asked, position: string, missing: readonly string[]): boolean =>
  "position" in asked && asked.position === position && missing.includes(asked.check);

/** The option that tells most a second. */
const bestOf = (options: readonly Option[]): Option | undefined =>
  options.reduce<Option | undefined>(
    (best, one) =>
      best === undefined || one.bits / one.seconds > best.bits / best.seconds ? one : best,
    undefined,
  );
