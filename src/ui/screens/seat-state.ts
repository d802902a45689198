import type { Advice } from "#core/diagnosis/advice.ts";
import { chainTo } from "#core/rig/chain.ts";
import { type Effect, effects } from "#core/rig/effect.ts";
import { type BuiltRig, clientId } from "#core/rig/rig.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import type { Derived, State } from "#core/session/derive.ts";
import { type Where, whereNext } from "#core/session/where.ts";
import { whereText } from "#core/words/fault-text.ts";
import { placeAlong, sharedLinks } from "#ui/parts/chain-place.ts";
import { effectAt, effectBriefly } from "#ui/parts/fault-effect.ts";
import type { Words } from "#ui/words/use-words.ts";

/** What the board shows of one position. */
export interface Seat {
  readonly id: string;
  readonly name: string;
  readonly state: State;
  /** One line of words. */
  readonly words: string;
  readonly needsYou: boolean;
  /** What is wrong, when something is: where on the trunk, or behind the fan-out. */
  readonly wrong?: { readonly effect: Effect; readonly fault: RigFault; readonly onTrunk: boolean };
}

export const seatsOf = (words: Words, derived: Derived): readonly Seat[] =>
  derived.rig.positions.map(({ id, name }) => seatOf(words, derived, id, name));

/** What was ordered needs nobody, and is as well as it is meant to be. */
function seatOf({ language, board }: Words, derived: Derived, id: string, name: string): Seat {
  const state = derived.state(id);
  const plain = { id, name, state, words: board.states[state], needsYou: false };
  if (state !== "wrong" && state !== "unsure") return plain;
  const leading = derived.standing(id).leading?.group;
  const [fault] = leading ? leading.faults : [];
  if (leading === undefined || fault === undefined) return { ...plain, needsYou: true };
  const { model } = derived;
  const said = language.faults[fault.name].is(whereText(language, model.rig, fault));
  if (state === "wrong" && fault.part === clientId)
    return { ...plain, state: "healthy", words: said };
  const effect = effectAt(model.rig, id, fault);
  const onTrunk = leading.branch === model.root && derived.rig.positions.length > 1;
  const words = effectBriefly(language, effect) ?? said;
  return {
    ...plain,
    words: state === "unsure" ? board.unsureYet(words) : words,
    needsYou: true,
    wrong: { effect, fault, onTrunk },
  };
}

/** What is wrong on the trunk, as the positions hear it. */
export const trunkTrouble = ({ model }: Derived, seats: readonly Seat[]) =>
  onTrunk(
    model.rig,
    seats.flatMap(({ wrong }) => (wrong?.onTrunk ? [wrong] : [])),
  );

/** What is wrong there, drawn once however many positions hear it: the plainest of what they hear, and where along the trunk it is. */
export function onTrunk<Wrong extends { readonly effect: Effect; readonly fault: RigFault }>(
  rig: BuiltRig,
  found: readonly Wrong[],
) {
  const [wrong] = found.toSorted((a, b) => effects.indexOf(a.effect) - effects.indexOf(b.effect));
  const along = wrong && placeAlong(rig, trunkOf(rig), wrong.fault);
  return wrong === undefined || along === undefined ? undefined : { ...wrong, along };
}

export const trunkOf = (rig: Derived["model"]["rig"]) =>
  sharedLinks(rig.positions.map(({ id }) => chainTo(rig, id)));

/** Whose ears are asked now: what the position in hand needs may be heard at another one. */
export function seatAsked(advice: Advice): string | undefined {
  if (advice.advice !== "ask") return undefined;
  const { asked } = advice.option;
  return "position" in asked ? asked.position : undefined;
}

const known = new WeakMap<Derived, Where>();

/** Where to go next, worked out once. */
export function whereTo(derived: Derived): Where {
  const found = known.get(derived) ?? wentThrough(whereNext(derived));
  known.set(derived, found);
  return found;
}

function wentThrough(looking: Generator<void, Where>): Where {
  for (;;) {
    const { done, value } = looking.next();
    if (done) return value;
  }
}

/** The position to go to next: before anything is worked out the first, and of all at once the first of these. */
export function nextSeat(seats: readonly Seat[], derived?: Derived): Seat | undefined {
  if (derived === undefined) return seats[0];
  const where = whereTo(derived);
  if (where.go === "nowhere") return undefined;
  const id = where.go === "position" ? where.position : where.positions[0];
  return seats.find((seat) => seat.id === id);
}

/** How likely it is that nothing which can be heard is wrong in what all positions share now. */
export function trunkSound({ beliefs, groups, rig }: Derived): number {
  const { era } = beliefs;
  const silent = new Set(
    groups.filter(({ inaudible }) => inaudible).flatMap(({ faults }) => faults),
  );
  const ways = rig.positions.map(({ id }) => era.onTheWay(id));
  const audible = (fault: RigFault) => !silent.has(fault) && ways.every((way) => way.has(fault));
  const { faults, probabilities } = beliefs.sets(era.root);
  return probabilities.reduce(
    (sum, probability, at) => sum + (faults[at]?.some(audible) ? 0 : probability),
    0,
  );
}
