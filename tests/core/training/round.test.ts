import { describe, expect, test } from "vitest";
import { type BuiltRig, build } from "#core/rig/rig.ts";
import { builtInRigs, straightIn } from "#core/rig/rigs.ts";
import {
  answer,
  isRight,
  type Question,
  questionAfter,
  type Round,
  roundAt,
} from "#core/training/round.ts";
import { type Answered, scoreOf } from "#core/training/score.ts";
import { toldApart } from "#core/training/soundings.ts";

const seat = "position 1";
const rounds = builtInRigs.map((rig) => roundAt(build(rig), seat, 7));
const [, , small] = rounds;
if (small === undefined) throw new Error("three rigs are built in");

type Learner = (question: Question) => string;
const knowsAll: Learner = ({ right }) => right;
const firstChoice: Learner = ({ choices }) => choices[0]?.id ?? "";
const neverKnows =
  (id: string): Learner =>
  ({ right, choices }) =>
    right === id ? (choices.find((choice) => choice.id !== id)?.id ?? id) : right;

/** So many questions, each answered by a learner. */
function played(round: Round, count: number, learner: Learner) {
  const asked: Question[] = [];
  const answers: Answered[] = [];
  while (asked.length < count) {
    const question = questionAfter(round, answers);
    asked.push(question);
    answers.push(answer(question, learner(question)));
  }
  return { asked, answers };
}

describe.each(rounds.map((round) => [round.rig.name, round] as const))("%s", (_, round) => {
  const learners = { knowsAll, firstChoice, weak: neverKnows(round.soundings[0].id) };

  test.each(Object.entries(learners))(
    "every question has one right answer: %s",
    (_name, learner) => {
      for (const question of played(round, 200, learner).asked) {
        const { choices, right, fault } = question;
        expect(choices.filter(({ id }) => isRight(question, id))).toHaveLength(1);
        expect(new Set(choices.map(({ id }) => id)).size).toBe(choices.length);
        expect(choices).toHaveLength(4);
        const holding = choices.filter(({ faults }) => faults.includes(fault));
        expect(holding.map(({ id }) => id)).toEqual([right]);
        for (const other of choices)
          if (other.id !== right && holding[0]) expect(toldApart(holding[0], other)).toBe(true);
      }
    },
  );

  test.each(Object.entries(learners))(
    "every sounding comes up in any 3n questions: %s",
    (_name, learner) => {
      const n = round.soundings.length;
      const { asked } = played(round, 9 * n, learner);
      for (const { id } of round.soundings) {
        const at = asked.flatMap(({ right, number }) => (right === id ? [number] : []));
        const gaps = [...at, asked.length].map((one, index) => one - (at[index - 1] ?? -1));
        expect(Math.max(...gaps), id).toBeLessThanOrEqual(3 * n);
      }
    },
  );

  test("none comes up twice running", () => {
    const { asked } = played(round, 300, firstChoice);
    for (const [at, { right }] of asked.entries()) expect(right).not.toBe(asked[at - 1]?.right);
  });

  test("each of the faults that sound alike is played", () => {
    const most = round.soundings.reduce((a, b) => (b.faults.length > a.faults.length ? b : a));
    const { asked } = played(round, 40 * round.soundings.length, neverKnows(most.id));
    const heard = new Set(
      asked.filter(({ right }) => right === most.id).map(({ fault }) => fault.id),
    );
    expect(heard.size).toBeGreaterThan(most.faults.length / 2);
  });
});

test("the same seed is the same round, another seed another", () => {
  const again = (seed: number) =>
    played(roundAt(build(straightIn), seat, seed), 60, firstChoice).asked.map(
      ({ fault, choices }) => [fault.id, ...choices.map(({ id }) => id)],
    );
  expect(again(3)).toEqual(again(3));
  expect(again(3)).not.toEqual(again(4));
});

test("what somebody never knows comes up at least twice as often as the rest", () => {
  const [, weak] = small.soundings;
  if (weak === undefined) throw new Error("one sounding is no round");
  const { answers } = played(small, 1000, neverKnows(weak.id));
  const score = scoreOf(answers);
  const others = small.soundings.filter(({ id }) => id !== weak.id);
  const usual = others.reduce((sum, { id }) => sum + (score[id]?.asked ?? 0), 0) / others.length;
  expect(score[weak.id]?.asked ?? 0).toBeGreaterThan(2 * usual);
  expect(score[weak.id]?.right).toBe(0);
});

test("what a sounding was mistaken for is offered again beside it", () => {
  const question = questionAfter(small, []);
  const wrong = question.choices.find(({ id }) => id !== question.right)?.id ?? "";
  const answers = [answer(question, wrong)];
  const later = played(small, 400, knowsAll).answers.slice(1);
  for (let at = 1; at < later.length; at++) {
    const again = questionAfter(small, [...answers, ...later.slice(0, at)]);
    if (again.right === question.right) expect(again.choices.map(({ id }) => id)).toContain(wrong);
  }
});

test("kept answers about another rig are passed over", () => {
  const stranger: Answered = { asked: "no such fault", given: "another" };
  const question = questionAfter(small, [stranger, stranger]);
  expect(question.number).toBe(2);
  expect(question.choices.some(({ id }) => isRight(question, id))).toBe(true);
});

test("what was not offered is refused by its name", () => {
  const question = questionAfter(small, []);
  expect(() => answer(question, "hum")).toThrow("hum was not offered");
});

test("where nothing can go wrong there is no round", () => {
  const rig = build(straightIn);
  const link = <One>(one: One) => ({ ...one, kind: "link" as const });
  // Parts without faults, and plugs that have no step out.
  const sound: BuiltRig = {
    ...rig,
    part: (id) => {
      const part = rig.part(id);
      return {
        ...part,
        faults: [],
        plugs: part.plugs.map(link),
        sockets: part.sockets.map(link),
      };
    },
  };
  expect(() => roundAt(sound, seat, 1)).toThrow("nothing can be heard to go wrong at position 1");
});
