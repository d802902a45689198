import type { BuiltRig } from "#core/rig/rig.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import { type Random, seeded } from "#core/units/random.ts";
import { drawn, shuffled } from "./draw.ts";
import { type Answered, scoreOf, weakness } from "./score.ts";
import { type Sounding, soundingsAt, toldApart } from "./soundings.ts";

/** An ear-training round: plain data but for the rig. What is asked next follows from it and from the answers so far. */
export interface Round {
  readonly rig: BuiltRig;
  /** Whose ears: the one that all questions are about. */
  readonly position: string;
  readonly seed: number;
  /** Every answer there is, the likeliest fault first. */
  readonly soundings: readonly [Sounding, ...Sounding[]];
}

/**
 * One question. To play it: the ear matrix of the round's position with `fault` alone, beside a healthy one if wished. To show it: the
 * choices, each by the words for its `effect` and for its likeliest fault.
 */
export interface Question {
  /** How many were answered before it. */
  readonly number: number;
  readonly position: string;
  readonly fault: RigFault;
  /** In the order to show them; one of them sounds like what is played. */
  readonly choices: readonly Sounding[];
  /** The id of the right choice. Not to be shown before the answer. */
  readonly right: string;
}

/** How many choices a question has, where there are so many. */
const mostChoices = 4;
/** How often a sounding is drawn that was never asked, and that was lately taken for others each time, beside one that is known. */
const newWeight = 3;
const weakWeight = 5;

/** A round at a position. Throws where nothing can be heard to go wrong there. */
export function roundAt(rig: BuiltRig, position: string, seed: number): Round {
  const [first, ...rest] = soundingsAt(rig, position);
  if (first === undefined) throw new Error(`nothing can be heard to go wrong at ${position}`);
  return { rig, position, seed, soundings: [first, ...rest] };
}

/**
 * The question after some answers, this round's or kept from before; those about what this rig has not are not read. The same round and
 * answers, the same question. Of n soundings each comes up at least once in any 3n questions, none twice running, and those that were
 * lately named wrongly more often.
 */
export function questionAfter(
  { position, seed, soundings }: Round,
  answered: readonly Answered[],
): Question {
  const number = answered.length;
  const random = seeded(seed ^ Math.imul(number + 1, 0x9e3779b1));
  const known = answered.filter(({ asked }) => soundings.some(({ id }) => id === asked));
  const asked = overdue(soundings, known) ?? dueByChance(soundings, known, random);
  return {
    number,
    position,
    fault: drawn(asked.faults, ({ weight }) => weight, random),
    choices: choicesFor(asked, soundings, known, random),
    right: asked.id,
  };
}

/** Whether a choice is the right one. Throws on what was not offered: a mistake of ours. */
export function isRight({ choices, right }: Question, given: string): boolean {
  if (choices.every(({ id }) => id !== given)) throw new Error(`${given} was not offered`);
  return given === right;
}

/** What is kept of an answer. Throws on what was not offered. */
export function answer(question: Question, given: string): Answered {
  isRight(question, given);
  return { asked: question.right, given };
}

/** The one not heard for longest, once that is twice as long as all of them take in turn. */
function overdue(
  soundings: Round["soundings"],
  answered: readonly Answered[],
): Sounding | undefined {
  const last = ({ id }: Sounding) => answered.findLastIndex(({ asked }) => asked === id);
  const oldest = soundings.reduce((old, one) => (last(one) < last(old) ? one : old));
  return answered.length - last(oldest) > 2 * soundings.length ? oldest : undefined;
}

function dueByChance(
  soundings: Round["soundings"],
  answered: readonly Answered[],
  random: Random,
): Sounding {
  const [first, ...rest] = soundings.filter(({ id }) => id !== answered.at(-1)?.asked);
  if (first === undefined) return soundings[0];
  return drawn(
    [first, ...rest],
    ({ id }) => {
      const weak = weakness(answered, id);
      return weak === undefined ? newWeight : 1 + (weakWeight - 1) * weak;
    },
    random,
  );
}

/** The right one among what is clearly something else; what it was mistaken for before comes first. */
function choicesFor(
  asked: Sounding,
  soundings: Round["soundings"],
  answered: readonly Answered[],
  random: Random,
): readonly Sounding[] {
  const others = soundings.filter(({ id }) => id !== asked.id);
  const clear = others.filter((other) => toldApart(asked, other));
  const { takenFor = {} } = scoreOf(answered)[asked.id] ?? {};
  const wrong = shuffled(clear.length > 0 ? clear : others, random)
    .toSorted((a, b) => (takenFor[b.id] ?? 0) - (takenFor[a.id] ?? 0))
    .slice(0, mostChoices - 1);
  return shuffled([asked, ...wrong], random);
}
