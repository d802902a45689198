import type { EarCheck } from "#core/checks/check.ts";
import type { Behaviour } from "#core/rig/behaviour.ts";
import { straight } from "#core/rig/behaviour.ts";
import type { Gains } from "#core/rig/effect.ts";

/** Where somebody at a seat of the bench would point, from the gains there: for each question of a check, in the core's order. */
export const pointsAt = ({ questions }: EarCheck, gains: Gains): readonly string[] =>
  questions.map(({ answers, predict }) => {
    const chances = predict(behaviourOf(gains), straight);
    return answers[chances.indexOf(Math.max(...chances))] ?? "";
  });

const behaviourOf = ([ll, lr, rl, rr]: Gains): Behaviour => {
  const real = (re: number) => ({ re, im: 0 });
  return {
    ...straight,
    gains: [
      [real(ll), real(lr)],
      [real(rl), real(rr)],
    ],
  };
};
