import { dot } from "./dot.ts";
import type { Heard, Measured } from "./evidence.ts";
import { chanceOfMatrix } from "./measured-matrix.ts";
import type { Model } from "./model.ts";
import { remembered } from "./remembered.ts";
import { rememberedNumbers } from "./remembered-numbers.ts";

/** The chance of what was found at a position, for a way to it over time. */
export type Likelihood = (way: number) => number;

/** One question as it was answered, with how to predict it. */
type Reader = Heard & { readonly predict: (behaviour: number) => Float64Array };

/**
 * The likelihood of everything found at a position, remembered by way; none where nothing was. Positions of one kind that found the same
 * share one, from one question to the next.
 */
export function likelihoodAt(
  model: Model,
  heard: readonly Heard[],
  measured: readonly Measured[],
): Likelihood | undefined {
  const [position] = [...heard, ...measured].map((one) => one.position);
  if (position === undefined) return undefined;
  const key = [
    model.healthy(position),
    ...heard.map(
      ({ question, channel, weights, playings }) =>
        `${question.name} ${channel} ${weights} ${playings.map(({ weights: each }) => each)}`,
    ),
    ...measured.map(({ channel, gains, error, free }) => `${channel} ${gains} ${error} ${free}`),
  ].join("|");
  return model.likelihoods.of(key, () => likelihoodOf(model, position, heard, measured));
}

/** The product over channels, each way worked out once. */
function likelihoodOf(
  model: Model,
  position: string,
  heard: readonly Heard[],
  measured: readonly Measured[],
): Likelihood {
  const readers = heard.map((one) => ({ ...one, predict: model.predict(one.question, position) }));
  const channels = [...new Set([...heard, ...measured].map(({ channel }) => channel))];
  const parts = channels.map((channel) => {
    const said = chanceOf(
      model,
      readers.filter((one) => one.channel === channel),
    );
    const gains = measured
      .filter((one) => one.channel === channel)
      .map((one, _, all) => chanceOfMatrix(model, position, one, all.length));
    const chance = (behaviour: number) =>
      gains.reduce((product, one) => product * one(behaviour), said(behaviour));
    return {
      channel,
      chance: channels.length > 1 ? rememberedNumbers(chance, model.dense) : chance,
    };
  });
  const { tokens } = model;
  const [only] = parts;
  if (only !== undefined && parts.length === 1) {
    const chance = rememberedNumbers(only.chance, model.dense);
    return (way) => chance(tokens.at(way, only.channel));
  }
  return rememberedNumbers((way: number) => {
    let product = 1;
    for (const { channel, chance } of parts) product *= chance(tokens.at(way, channel));
    return product;
  }, model.denseWays);
}

/** What was heard under one behaviour: the same judgement each time, or where it comes and goes one drawn anew at each playing. */
function chanceOf({ pool }: Model, asked: readonly Reader[]): (behaviour: number) => number {
  const steady = (some: readonly Reader[], behaviour: number): number => {
    let product = 1;
    for (const { predict, weights } of some) product *= dot(predict(behaviour), weights);
    return product;
  };
  const once = asked.filter(({ question }) => question.unsteady !== undefined);
  let playings: ReturnType<typeof playingsOf> | undefined;
  return (behaviour) => {
    if (!pool.comesAndGoes(behaviour)) return steady(asked, behaviour);
    playings ??= playingsOf(asked.filter((one) => !once.includes(one)));
    const showings = pool.showings(behaviour);
    let product = steady(once, behaviour);
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
    return remembered((behaviour: number) => {
      let product = 1;
      for (const { predict, weights } of about) product *= dot(predict(behaviour), weights);
      return product;
    });
  });
}
