import { catalogue } from "#core/checks/catalogue.ts";
import type { EarCheck, Question } from "#core/checks/check.ts";
import { complaint } from "#core/checks/complaint.ts";
import { given, slip } from "#core/checks/slips.ts";
import { both } from "#core/inference/information.ts";
import type { Probability } from "#core/units/units.ts";
import type { Pool } from "./pool.ts";
import { remembered } from "./remembered.ts";
import { toldByInstrument } from "./told-by-instrument.ts";

/** The table of answers: what would be said at a position, for each behaviour of the whole way to it. Filled as it is read. */
export interface Answers {
  /** One probability for each answer, before slips. */
  readonly predict: (question: Question, position: string) => (behaviour: number) => Float64Array;
  /** One probability for each answer to a check as a whole, slips included, where nothing was asked before. */
  readonly answers: (check: EarCheck, position: string) => (behaviour: number) => Float64Array;
  /** The first met of all behaviours that would be answered alike, to every check. */
  readonly standFor: (position: string) => (behaviour: number) => number;
  /** The same, with what somebody would complain of. */
  readonly standForTalk: (position: string) => (behaviour: number) => number;
  /** Whether some check by ear would be answered otherwise of one behaviour than of another; of an instrument, whether it shows. */
  readonly differ: (position: string) => (a: number, b: number) => boolean;
  /** Whether what is there would be told from a healthy chain. */
  readonly audible: (position: string) => (behaviour: number) => boolean;
}

const asked = catalogue.flatMap(({ questions }) => questions);
/** A complaint is an answer that nobody asked for. */
const everyQuestion = [...asked, complaint];

/** What a table is made for: a rig's behaviours, its healthy ways, and the positions that end in an instrument. */
export interface Ends {
  readonly pool: Pool;
  readonly healthy: (position: string) => number;
  readonly instrument: (position: string) => { readonly tolerance: number } | undefined;
}

/** The table of a rig. */
export function answersFor(ends: Ends): Answers {
  const { pool, healthy, instrument } = ends;
  const perWay = <Value>(work: Work<Value>) => eachWay(ends, work);
  const questions = lookup(everyQuestion, (question) =>
    perWay((behaviour, position) => {
      if (question.unsteady !== undefined && pool.comesAndGoes(behaviour)) return question.unsteady;
      const normal = pool.behaviour(healthy(position));
      return mixed(
        pool.showings(behaviour).map(({ number, share }) => {
          const way = pool.behaviour(number);
          const said = way.unlisted ? anything(question) : question.predict(way, normal);
          return { said, share };
        }),
      );
    }),
  );
  const predict: Answers["predict"] = (question, position) => questions(question)(position);
  const whole = lookup(catalogue, (check) =>
    perWay((behaviour, position) =>
      check.questions
        .map((question) => given(predict(question, position)(behaviour), slip))
        .reduce(both),
    ),
  );
  const differ: Answers["differ"] = (position) => {
    const there = instrument(position);
    if (there !== undefined) return toldByInstrument(pool, there.tolerance, healthy(position));
    return (a, b) => differs(predict, position, a, b);
  };
  return {
    predict,
    answers: (check, position) => whole(check)(position),
    standFor: perWay(standing(ends, predict, asked)),
    standForTalk: perWay(standing(ends, predict, everyQuestion)),
    differ,
    audible: perWay((behaviour, position) => differ(position)(behaviour, healthy(position))),
  };
}

type Work<Value> = (behaviour: number, position: string) => Value;

/** A function of a behaviour at a position, remembered; positions with equal healthy ways share it, unless an instrument stands there. */
function eachWay<Value>({ healthy, instrument }: Ends, work: Work<Value>) {
  const kinds = new Map<number | string, (behaviour: number) => Value>();
  return (position: string) => {
    const kind = instrument(position) === undefined ? healthy(position) : position;
    const made = kinds.get(kind) ?? remembered((behaviour) => work(behaviour, position));
    kinds.set(kind, made);
    return made;
  };
}

/**
 * The first met of all behaviours of a position that are answered alike; of one that comes and goes, of each it shows. An instrument shows
 * each as it is.
 */
function standing(
  { pool, healthy, instrument }: Ends,
  predict: Answers["predict"],
  questions: readonly Question[],
): Work<number> {
  const first = new Map<string, number>();
  const stand = (behaviour: number, position: string): number => {
    if (instrument(position) !== undefined) return behaviour;
    const shown = pool.showings(behaviour);
    if (shown.length > 1)
      return pool.either(
        shown.map(({ number, share }) => ({ number: stand(number, position), share })),
      );
    const name = `${healthy(position)} ${rounded(predict, position, behaviour, questions)}`;
    const stands = first.get(name) ?? behaviour;
    first.set(name, stands);
    return stands;
  };
  return stand;
}

/** What is said of one of several behaviours, drawn by its share. */
function mixed(all: readonly { said: Float64Array; share: Probability }[]): Float64Array {
  const [first] = all;
  if (first === undefined) throw new Error("nothing shows");
  if (all.length === 1) return first.said;
  return first.said.map((_, at) =>
    all.reduce((sum, { said, share }) => sum + share * (said[at] ?? 0), 0),
  );
}

/** How often what is not on the list is faint. Common practice, no source. */
const faintly: Probability = 0.15;

/** What may be said of something that is not on the list: any answer, but seldom a faint one. */
function anything({ answers }: Question): Float64Array {
  const faint = answers.filter((answer) => answer.startsWith("faint")).length;
  const plain = (faint === 0 ? 1 : 1 - faintly) / (answers.length - faint);
  return Float64Array.from(answers, (answer) =>
    answer.startsWith("faint") ? faintly / faint : plain,
  );
}

/** Answers that agree to six decimals are alike. */
const rounded = (
  predict: Answers["predict"],
  position: string,
  behaviour: number,
  questions: readonly Question[],
): string =>
  questions
    .map((question) => predict(question, position)(behaviour).map((p) => Math.round(p * 1e6)))
    .join();

function lookup<Key extends { readonly name: string }, Value>(
  keys: readonly Key[],
  make: (key: Key) => Value,
): (key: Key) => Value {
  const known = new Map(keys.map((key) => [key, make(key)]));
  return (key) => {
    const found = known.get(key);
    if (found === undefined) throw new Error(`'${key.name}' is not in the catalogue`);
    return found;
  };
}

/** Two answers are told apart where their chances differ by more than this, slips included. */
const apart: Probability = 0.05;

/** Whether two behaviours of the whole way to a position would be answered differently by ear. */
function differs(predict: Answers["predict"], position: string, a: number, b: number): boolean {
  const far = (question: Question) => {
    const read = predict(question, position);
    const [first, second] = [read(a), read(b)];
    return first.some((p, at) => (1 - slip) * Math.abs(p - (second[at] ?? 0)) > apart);
  };
  return a !== b && asked.some(far);
}
