import { heards } from "#core/listening/heard.ts";
import { percept, sidewards } from "#core/listening/percept.ts";
import type { Behaviour } from "#core/rig/behaviour.ts";
import { fromDecibels } from "#core/units/decibels.ts";
import type { Decibels } from "#core/units/units.ts";
import type { EarCheck } from "./check.ts";
import { atEars, type Programme, referenceFor } from "./hear.ts";

/** The farthest to either side that it is pushed. */
export const farthest: Decibels = 12;

/** By how much the right may be made louder than the left, in classes of two decibels: half of one is about what is just noticed (Breebaart and Faller, 0.5 to 1 dB). */
const offsets: readonly Decibels[] = Array.from(
  { length: farthest + 1 },
  (_, at) => 2 * at - farthest,
);

/** It stays at one side, or all round, however it is pushed. */
export const neverCentred = "never in the middle";

/** The finding, for a right side that was made so much louder than the left. */
const centredAt = (right: Decibels): string => {
  if (right === 0) return "in the middle as it is";
  return right > 0
    ? `in the middle with the right up ${right} dB`
    : `in the middle with the left up ${-right} dB`;
};

/** What was found where the right side was made so much louder, in whole decibels: between two classes it may be either. */
export const centredNear = (right: Decibels): readonly string[] =>
  right % 2 === 0 ? [centredAt(right)] : [right - 1, right + 1].map(centredAt);

/** By how much the right was made louder than the left, in an answer that says so. */
export const balanceOf = (answer: string): Decibels | undefined =>
  offsets.find((one) => centredAt(one) === answer);

/** The same of all that one answer may have been: of two classes the middle between them; nothing of more, which is 'can't tell', nor where it was never in the middle. */
export function rightUp(answers: readonly string[]): Decibels | undefined {
  const up = answers.flatMap((answer) => balanceOf(answer) ?? []);
  if (up.length === 0 || up.length < answers.length || up.length > 2) return undefined;
  return up.reduce((sum, one) => sum + one, 0) / up.length;
}

/** How far apart people stop (the least difference they notice, a little more for hurry; common practice, no source). */
const spread: Decibels = 1.2;

const middles = heards.flatMap((heard, at) => (heard.endsWith("middle") ? [at] : []));

/** The same noise on both sides with the right so much louder. */
const pushed = (right: Decibels): Programme => [
  fromDecibels(Math.min(0, -right)),
  fromDecibels(Math.min(0, right)),
];

/** Where somebody stops who pushes it to the middle, the nearest to where it begins. */
function stopping(behaviour: Behaviour): Decibels {
  const aside = (right: Decibels) => {
    const [left, other] = atEars(behaviour, pushed(right));
    return (
      Math.abs(sidewards(left, other, behaviour.late * behaviour.worn)) + Math.abs(right) / 1000
    );
  };
  return offsets.reduce((best, one) => (aside(one) < aside(best) ? one : best), 0);
}

/** Whether it can be in the middle at all when pushed so. */
function centred(behaviour: Behaviour, healthy: Behaviour, right: Decibels): number {
  const [left, other] = atEars(behaviour, pushed(right));
  const reference = Math.max(...referenceFor(healthy, [1, 1]));
  const said = percept(left, other, reference, behaviour.late * behaviour.worn);
  return middles.reduce((sum, at) => sum + (said[at] ?? 0), 0);
}

/** A noise that goes on, pushed to the middle by whoever listens: by how many decibels the sides differ. */
export const balance: EarCheck = {
  name: "balance",
  signal: "balance-tone",
  questions: [
    {
      name: "pushed to the middle",
      answers: [...offsets.map(centredAt), neverCentred],
      predict: (behaviour, healthy) => {
        const best = stopping(behaviour);
        const middle = centred(behaviour, healthy, best);
        const near = offsets.map((one) => Math.exp(-(((one - best) / spread) ** 2) / 2));
        const all = near.reduce((sum, one) => sum + one, 0);
        return Float64Array.from([...near.map((one) => (middle * one) / all), 1 - middle]);
      },
    },
  ],
  seconds: 25,
  required: false,
};
