import type { Branch } from "./branch.ts";
import { dot } from "./dot.ts";
import type { Era } from "./era.ts";
import type { Evidence, Heard } from "./evidence.ts";
import type { Model } from "./model.ts";
import { remembered } from "./remembered.ts";

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
  const epochs = [...new Set(readers.map(({ epoch }) => epoch))].map((epoch) => ({
    epoch,
    asked: readers.filter((one) => one.epoch === epoch),
  }));
  const made =
    likelihoods.get(key) ??
    remembered((history: number) =>
      epochs.reduce(
        (product, { epoch, asked }) => product * chance(model, asked, histories.at(history, epoch)),
        1,
      ),
    );
  likelihoods.set(key, made);
  return made;
}

/** What was heard under one behaviour: the same judgement each time, or where it comes and goes one drawn anew at each playing. */
function chance({ pool }: Model, asked: readonly Reader[], behaviour: number): number {
  const showings = pool.showings(behaviour);
  if (showings.length === 1)
    return asked.reduce(
      (product, { predict, weights }) => product * dot(predict(behaviour), weights),
      1,
    );
  const numbers = new Set(asked.flatMap(({ playings }) => playings.map(({ number }) => number)));
  let product = 1;
  for (const played of numbers) {
    const about = asked.flatMap(({ predict, playings }) =>
      playings
        .filter(({ number }) => number === played)
        .map(({ weights }) => ({ predict, weights })),
    );
    product *= showings.reduce(
      (sum, { number, share }) =>
        sum +
        about.reduce((all, { predict, weights }) => all * dot(predict(number), weights), share),
      0,
    );
  }
  return product;
}
