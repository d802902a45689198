import { turn } from "./noise.ts";
import { ofNoise } from "./of-noise.ts";
import type { Signal } from "./signal.ts";

/** So many rounds, played once. */
const rounds = 3;
const round = 3 * turn.length;
const first = 0.1;

/** Left, right, middle, 300 ms each, round and round: for ears while a plug or a lead is moved. */
export const rotation: Signal = {
  ...ofNoise(turn, first + rounds * round + 0.1, () =>
    Array.from({ length: rounds }, (_, at) => first + at * round).flatMap((start) => [
      { start, end: start + turn.length, left: 1, right: 0 },
      { start: start + turn.length, end: start + 2 * turn.length, left: 0, right: 1 },
      { start: start + 2 * turn.length, end: start + round, left: 1, right: 1 },
    ]),
  ),
  loop: (rate) => ({ from: Math.round(first * rate), to: Math.round((first + round) * rate) }),
};
