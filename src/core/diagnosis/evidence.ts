import { earCheck } from "#core/checks/catalogue.ts";
import type { Question } from "#core/checks/check.ts";
import type { Asked, Finding, Happening } from "#core/checks/finding.ts";
import { type Look, predictLook, sightsOf } from "#core/checks/look.ts";
import { lookSlip, meant, slip } from "#core/checks/slips.ts";
import type { Move } from "#core/rig/moves.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import type { Model } from "./model.ts";

/** Everything answered to one question between two moves: the chance of it, for each answer that may have been meant. */
export interface Heard {
  readonly question: Question;
  readonly position: string;
  /** How many moves came before. */
  readonly epoch: number;
  readonly weights: Float64Array;
  /** All answers given. */
  readonly said: ReadonlySet<string>;
  /** How often it was asked. */
  readonly times: number;
}

export interface Seen {
  readonly look: Look;
  readonly epoch: number;
  readonly weights: Float64Array;
}

/** What is known of a rig: a log's findings and moves, in the form that likelihoods are made of. */
export interface Evidence {
  readonly moves: readonly Move[];
  readonly heard: readonly Heard[];
  readonly seen: readonly Seen[];
}

/** Whoever is asked twice gives the same judgement twice; only the slips are drawn anew. So answers to one question are gathered. */
export function evidenceOf(model: Model, happenings: readonly Happening[]): Evidence {
  const moves: Move[] = [];
  const heard: Heard[] = [];
  const seen: Seen[] = [];
  const find = ({ asked, results }: Finding): void => {
    if (asked.check === "look") seen.push(...glance(model, asked, results, moves.length));
    else for (const one of answered(asked, results, moves.length)) gather(heard, one);
  };
  for (const happening of happenings)
    if (happening.kind === "move") moves.push(happening.move);
    else find(happening.finding);
  return { moves, heard, seen };
}

type Results = readonly (readonly string[])[];

/** What one asking of a check by ear says, question by question. */
const answered = (
  { check, position }: Exclude<Asked, { check: "look" }>,
  results: Results,
  epoch: number,
): Heard[] =>
  earCheck(check).questions.map((question, at) => {
    const said = known(question.answers, results[at]);
    return {
      question,
      position,
      epoch,
      weights: meant(question.answers, said, slip),
      said: new Set(said),
      times: 1,
    };
  });

/** Those of the answers given that the list has; words it does not know, or none, say nothing. */
function known(answers: readonly string[], given: readonly string[] = answers): readonly string[] {
  const listed = given.filter((one) => answers.includes(one));
  return listed.length > 0 ? listed : answers;
}

function glance(
  model: Model,
  { place }: Extract<Asked, { check: "look" }>,
  results: Results,
  epoch: number,
): Seen[] {
  const look = model.looks.find((one) => one.place === place);
  if (look === undefined) return []; // the drawing has changed since
  return [{ look, epoch, weights: meant(look.answers, known(look.answers, results[0]), lookSlip) }];
}

/** Adds to the evidence on the same question, or begins it. */
function gather(heard: Heard[], next: Heard): void {
  const at = heard.findIndex(
    (one) =>
      one.question === next.question && one.position === next.position && one.epoch === next.epoch,
  );
  const before = heard[at];
  if (before === undefined) {
    heard.push(next);
    return;
  }
  const weights = before.weights.map((w, index) => w * (next.weights[index] ?? 1));
  const said = new Set([...before.said, ...next.said]);
  heard[at] = { ...before, weights, said, times: before.times + 1 };
}

/** The likelihood of what a look showed, for each of some fault sets. */
export function glimpses({ look, weights }: Seen, sets: FaultLists): Float64Array {
  const { which, shown } = showing(look, sets);
  const chances = shown.map((there) => dot(predictLook(look, there), weights));
  return Float64Array.from(which, (at) => chances[at] ?? 1);
}

type FaultLists = readonly (readonly RigFault[])[];

/** Which of a look's answers each fault set would show: the different cases, and for each set the number of its case. */
export interface Showing {
  readonly shown: readonly (readonly string[])[];
  readonly which: Int32Array;
}

const showings = new WeakMap<FaultLists, Map<Look, Showing>>();

/** Remembered by the identity of the list of sets. */
export function showing(look: Look, sets: FaultLists): Showing {
  const memory = showings.get(sets) ?? new Map<Look, Showing>();
  showings.set(sets, memory);
  const known = memory.get(look);
  if (known !== undefined) return known;
  const cases = new Map<string, number>();
  const shown: (readonly string[])[] = [];
  const which = Int32Array.from(sets, (faults) => {
    const there = sightsOf(look, faults);
    const key = there.join();
    const at = cases.get(key) ?? shown.push(there) - 1;
    cases.set(key, at);
    return at;
  });
  memory.set(look, { shown, which });
  return { shown, which };
}

export function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let at = 0; at < a.length; at++) sum += (a[at] as number) * (b[at] as number);
  return sum;
}
