import type { Branch } from "./branch.ts";
import { dot } from "./dot.ts";
import type { Era } from "./era.ts";
import type { Evidence, Heard } from "./evidence.ts";
import type { Histories } from "./histories.ts";
import type { Model } from "./model.ts";
import type { Pool } from "./pool.ts";
import { rememberedNumbers } from "./remembered-numbers.ts";

/** The chance of what was heard, for a history of the way to where it was heard. */
export type Likelihood = (history: number) => number;

interface Work {
  readonly model: Model;
  readonly evidence: Evidence;
  readonly era: Era;
  /** Positions of one kind that heard the same share one. */
  readonly likelihoods: Map<string, Likelihood>;
}

/** One question as it was answered, with how to predict it. */
type Reader = Heard & { readonly predict: (behaviour: number) => Float64Array };

/** The likelihood of everything heard at the end of a branch, remembered by behaviour; none where nothing was heard. */
export function likelihoodAt(
  { model, evidence, era: { histories }, likelihoods }: Work,
  branch: Branch,
): Likelihood | undefined {
  const [position] = branch.positions;
  const heard = evidence.heard.filter((one) => one.position === position);
  if (heard.length === 0 || position === undefined || branch.below.length > 0) return undefined;
  const readers = heard.map((one) => ({ ...one, predict: model.predict(one.question, position) }));
  const key = [
    model.healthy(position),
    ...heard.map(
      ({ question, epoch, weights, playings }) =>
        `${question.name} ${epoch} ${weights} ${playings.map(({ weights: each }) => each)}`,
    ),
  ].join();
  const made = likelihoods.get(key) ?? likelihoodOf(model, histories, readers);
  likelihoods.set(key, made);
  return made;
}

/** The product over epochs, each history worked out once. */
function likelihoodOf(
  { pool }: Model,
  histories: Histories,
  readers: readonly Reader[],
): Likelihood {
  const epochs = [...new Set(readers.map(({ epoch }) => epoch))].map((epoch) => ({
    epoch,
    chance: chanceOf(
      pool,
      readers.filter((one) => one.epoch === epoch),
    ),
  }));
  return rememberedNumbers((history: number) => {
    let product = 1;
    for (const { epoch, chance } of epochs) product *= chance(histories.at(history, epoch));
    return product;
  });
}

/** What was heard under one behaviour: the same judgement each time, or where it comes and goes one drawn anew at each playing. */
function chanceOf(pool: Pool, asked: readonly Reader[]): (behaviour: number) => number {
  const steady = rememberedNumbers((behaviour: number) => {
    let product = 1;
    for (const { predict, weights } of asked) product *= dot(predict(behaviour), weights);
    return product;
  });
  const playings = playingsOf(asked);
  return (behaviour) => {
    if (!pool.comesAndGoes(behaviour)) return steady(behaviour);
    const showings = pool.showings(behaviour);
    let product = 1;
    for (const playing of playings) {
      let sum = 0;
      for (const { number, share } of showings) sum += share * playing(number);
      product *= sum;
    }
    return product;
  };
}

/** For each playing, what was said of it under one plain behaviour. */
function playingsOf(asked: readonly Reader[]): readonly ((behaviour: number) => number)[] {
  const numbers = new Set(asked.flatMap(({ playings }) => playings.map(({ number }) => number)));
  return [...numbers].map((played) => {
    const about = asked.flatMap(({ predict, playings }) =>
      playings
        .filter(({ number }) => number === played)
        .map(({ weights }) => ({ predict, weights })),
    );
    return rememberedNumbers((behaviour: number) => {
      let product = 1;
      for (const { predict, weights } of about) product *= dot(predict(behaviour), weights);
      return product;
    });
  });
}
