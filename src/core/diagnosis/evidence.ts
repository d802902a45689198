import { earCheck } from "#core/checks/catalogue.ts";
import type { Question } from "#core/checks/check.ts";
import type { Asked, Finding, Happening } from "#core/checks/finding.ts";
import type { Look } from "#core/checks/look.ts";
import { lookSlip, meant, slip } from "#core/checks/slips.ts";
import type { Move } from "#core/rig/moves.ts";
import type { Model } from "./model.ts";

/** Everything answered to one question between two moves: the chance of it, for each answer that may have been meant. */
export interface Heard {
  readonly question: Question;
  readonly position: string;
  /** How many moves there had been, up to the last one that touched the way there. */
  readonly epoch: number;
  readonly weights: Float64Array;
  /** All answers given. */
  readonly said: ReadonlySet<string>;
  /** How often it was asked. */
  readonly times: number;
  /** Each time it was asked by itself. Questions about one playing of a check bear one number. */
  readonly playings: readonly Playing[];
}

/** What was answered to a question about one playing. */
interface Playing {
  readonly number: number;
  readonly weights: Float64Array;
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
  /** The epoch that holds now at a position, and at a place to look at. */
  readonly nowAt: (position: string) => number;
  readonly nowOf: (look: Look) => number;
}

/** Whoever is asked twice gives the same judgement twice; only the slips are drawn anew. So answers to one question are gathered. */
export function evidenceOf(model: Model, happenings: readonly Happening[]): Evidence {
  const moves: Move[] = [];
  const heard: Heard[] = [];
  const seen: Seen[] = [];
  const nowAt = (position: string) => epochOf(moves, placesOn(model, position));
  const nowOf = ({ place }: Look) => epochOf(moves, new Set([place]));
  const find = ({ asked, results }: Finding, number: number): void => {
    if (asked.check === "look") {
      const look = model.looks.find((one) => one.place === asked.place);
      if (look !== undefined) glance(seen, look, results, nowOf(look));
    } else if (model.rig.positions.some(({ id }) => id === asked.position))
      for (const one of answered(asked, results, nowAt(asked.position), number)) gather(heard, one);
  };
  for (const [number, happening] of happenings.entries())
    if (happening.kind === "move") moves.push(happening.move);
    else find(happening.finding, number);
  return { moves, heard, seen, nowAt, nowOf };
}

/** Just after the last move at one of some places. */
const epochOf = (moves: readonly Move[], places: ReadonlySet<string>): number =>
  moves.findLastIndex(({ place }) => places.has(place)) + 1;

/** Every place on the way to a position that a hand may touch. */
function placesOn(model: Model, position: string): ReadonlySet<string> {
  const known = places.get(model) ?? new Map<string, ReadonlySet<string>>();
  places.set(model, known);
  const found =
    known.get(position) ??
    new Set(model.wayTo(position).flatMap(({ faults }) => faults.map(({ place }) => place)));
  known.set(position, found);
  return found;
}

const places = new WeakMap<Model, Map<string, ReadonlySet<string>>>();

type Results = readonly (readonly string[])[];

/** What one asking of a check by ear says, question by question. */
const answered = (
  { check, position }: Exclude<Asked, { check: "look" }>,
  results: Results,
  epoch: number,
  number: number,
): Heard[] =>
  earCheck(check).questions.map((question, at) => {
    const said = known(question.answers, results[at]);
    const weights = meant(question.answers, said, slip);
    return {
      question,
      position,
      epoch,
      weights,
      said: new Set(said),
      times: 1,
      playings: [{ number, weights }],
    };
  });

/** Those of the answers given that the list has; words it does not know, or none, say nothing. */
function known(answers: readonly string[], given: readonly string[] = answers): readonly string[] {
  const listed = given.filter((one) => answers.includes(one));
  return listed.length > 0 ? listed : answers;
}

/** A second look at what nobody touched shows the same, and takes the place of the first. */
function glance(seen: Seen[], look: Look, results: Results, epoch: number): void {
  const weights = meant(look.answers, known(look.answers, results[0]), lookSlip);
  const at = seen.findIndex((one) => one.look === look && one.epoch === epoch);
  seen.splice(at < 0 ? seen.length : at, at < 0 ? 0 : 1, { look, epoch, weights });
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
  const playings = [...before.playings, ...next.playings];
  heard[at] = { ...before, weights, said, times: before.times + 1, playings };
}
