import { type Cause, type Derived, english, type Hunt, huntIn, noisesAt } from "#core/index.ts";
import { cautionsFor, remediesFor } from "#core/noises/remedy.ts";
import { causeWords, trialQuestion, trialWords } from "#core/report/noise-words.ts";
import { inHundred, sentence } from "#core/report/phrases.ts";
import type { NoiseResult } from "./diagnosis-format.ts";
import { shown } from "./suspect-result.ts";

/** Every noise that a case speaks of at a position; nothing where it speaks of none. */
export function noisesField(
  derived: Derived,
  position: string,
): { readonly noises?: NoiseResult[] } {
  const noises = noisesAt(derived, position).flatMap((noise) => {
    const hunt = huntIn(derived, position, noise);
    return hunt === undefined ? [] : [noiseResult(derived, hunt)];
  });
  return noises.length === 0 ? {} : { noises };
}

function noiseResult(derived: Derived, { noise, sure, suspects, next }: Hunt): NoiseResult {
  const { rig } = derived;
  return {
    noise,
    sure,
    suspects: suspects
      .filter(({ probability }) => probability >= 0.01)
      .map(({ probability, causes }) => ({
        probability: shown(probability),
        causes: causes.map((cause) => ({
          cause: cause.cause,
          ...("part" in cause ? { part: cause.part } : {}),
          words: causeWords(english, rig, cause, noise),
          ...said(cause),
        })),
      })),
    ...(next === undefined
      ? {}
      : {
          next: {
            trial: next.trial,
            words: `${trialWords(english, rig, next.trial, noise)} ${trialQuestion(english, next.trial, noise)}`,
            seconds: next.seconds,
            bits: Number(next.bits.toFixed(4)),
          },
        }),
  };
}

const said = (cause: Cause) => ({
  means: english.noises.means[cause.cause],
  remedies: remediesFor(cause).map((one) => english.noises.remedies[one]),
  cautions: cautionsFor(cause).map((one) => english.noises.cautions[one]),
});

/** The same for people, line by line; what helps once it is sure. */
export const noiseLines = ({ noise, sure, suspects, next }: NoiseResult): readonly string[] => [
  `  ${sentence(english.noises.named[noise])}`,
  ...(next === undefined ? [] : [`    Try: ${next.words} (${next.seconds} s)`]),
  ...suspects.flatMap(({ probability, causes }, at) => [
    ...causes.map(({ words }, which) =>
      which === 0 ? `    - ${inHundred(english, probability)}: ${words}` : `        or ${words}`,
    ),
    ...(sure && at === 0 ? causes.flatMap(helpLines) : []),
  ]),
];

const helpLines = ({
  remedies,
  cautions,
}: NoiseResult["suspects"][number]["causes"][number]): readonly string[] =>
  [...remedies, ...cautions].map((line) => `        ${line}`);
