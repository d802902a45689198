import { earCheck } from "#core/checks/catalogue.ts";
import type { Question } from "#core/checks/check.ts";
import type { Asked, Finding } from "#core/checks/finding.ts";
import { predictLook, sightsOf } from "#core/checks/look.ts";
import { given, lookSlip } from "#core/checks/slips.ts";
import { predictTwist, twistAnswers } from "#core/checks/twist.ts";
import type { Random } from "#core/units/random.ts";
import type { Probability } from "#core/units/units.ts";
import { type World, wayIn } from "./world.ts";

/**
 * Somebody who listens, looks and presses. What they make of a sound that does not change they make of it every time; their finger slips
 * anew each time.
 */
export interface Person {
  /** How often the finger lands on any of the answers. */
  readonly slips: Probability;
  readonly random: Random;
  /** What they made of each sound so far. */
  readonly judged: Map<string, number>;
}

/** Somebody who has heard nothing yet. */
export const personOf = (slips: Probability, random: Random): Person => ({
  slips,
  random,
  judged: new Map(),
});

/** A place in a list of chances, drawn by them. */
export function drawnFrom(chances: Float64Array, random: Random): number {
  let left = random() * chances.reduce((sum, p) => sum + p, 0);
  const at = chances.findIndex((p) => {
    left -= p;
    return left < 0;
  });
  return at < 0 ? chances.findLastIndex((p) => p > 0) : at;
}

/**
 * What is found in a world. `epoch`: which state of the way to the position it is, so that a judgement is made anew once something was
 * touched. Throws on a reading or a measured matrix.
 */
export function found(world: World, person: Person, asked: Asked, epoch: number): Finding {
  if (asked.check === "look") return lookedAt(world, person, asked);
  if (asked.check === "twist") return twisted(world, person, asked);
  if (asked.check === "complaint") throw new Error("nobody asks for a complaint");
  const { questions } = earCheck(asked.check);
  const way = wayIn(world, asked.position);
  const shown = showing(world, way, person.random);
  const steady = !world.model.pool.comesAndGoes(way);
  const results = questions.map((question) => {
    const chances = world.model.predict(question, asked.position)(shown);
    const key = `${asked.position} ${epoch} ${question.name} ${asked.check} ${steady}`;
    const meant =
      (steady ? person.judged.get(key) : undefined) ?? drawnFrom(chances, person.random);
    person.judged.set(key, meant);
    return [pressed(question, meant, person)];
  });
  return { asked, results };
}

/** What a way shows at one playing. */
function showing({ model }: World, way: number, random: Random): number {
  const showings = model.pool.showings(way);
  const at = drawnFrom(
    Float64Array.from(showings, ({ share }) => share),
    random,
  );
  return showings[at]?.number ?? way;
}

/** The answer meant, or any of them where the finger slips. */
function pressed({ answers }: Question, meant: number, { slips, random }: Person): string {
  const at = random() < slips ? Math.floor(random() * answers.length) : meant;
  const answer = answers[at];
  if (answer === undefined) throw new Error("no such answer");
  return answer;
}

type Looked = Extract<Asked, { check: "look" }>;

function lookedAt({ model, there }: World, { random }: Person, asked: Looked): Finding {
  const look = model.looks.find(({ place }) => place === asked.place);
  if (look === undefined) throw new Error(`nothing is to be seen at ${asked.place}`);
  const chances = given(predictLook(look, sightsOf(look, there)), lookSlip);
  return { asked, results: [[look.answers[drawnFrom(chances, random)] ?? ""]] };
}

type Twisted = Extract<Asked, { check: "twist" }>;

function twisted({ there }: World, { random }: Person, asked: Twisted): Finding {
  const { part, plug } = asked;
  const here = there.filter((one) => one.part === part && (one.at === plug || one.at === "body"));
  const said = twistAnswers[drawnFrom(given(predictTwist(here), lookSlip), random)];
  return { asked, results: [[said ?? twistAnswers[0]]] };
}
