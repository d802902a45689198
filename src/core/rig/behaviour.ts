import { type Complex, size } from "#core/units/complex.ts";
import { chain, type Matrix } from "#core/units/matrix.ts";
import type { Seconds } from "#core/units/units.ts";

/** What a stretch of the way does to the programme, and what the people at its ends do to the answers. */
export interface Behaviour {
  /** Rows: what comes out, left first; columns: what goes in. */
  readonly gains: Matrix;
  /** How much later the right side comes than the left, seconds. */
  readonly late: Seconds;
  /** Minus one where the headphones are worn the wrong way round. */
  readonly worn: number;
  /** What each ear of the listener makes of a level, left first; one is healthy. */
  readonly hearing: readonly [left: number, right: number];
  /** Says left for right. */
  readonly mirrors: boolean;
  /** Nothing is known of it: any answer is as likely as any other. */
  readonly unlisted: boolean;
}

const one: Complex = { re: 1, im: 0 };
const none: Complex = { re: 0, im: 0 };

/** Changes nothing. */
export const straight: Behaviour = {
  gains: [
    [one, none],
    [none, one],
  ],
  late: 0,
  worn: 1,
  hearing: [1, 1],
  mirrors: false,
  unlisted: false,
};

/** First one, then the other. */
export function follow(first: Behaviour, then: Behaviour): Behaviour {
  const gains = chain(then.gains, first.gains);
  return {
    gains,
    late: lateAfter(first, gains) + then.late,
    worn: first.worn * then.worn,
    hearing: [first.hearing[0] * then.hearing[0], first.hearing[1] * then.hearing[1]],
    mirrors: first.mirrors !== then.mirrors,
    unlisted: first.unlisted || then.unlisted,
  };
}

/** What came late on the right comes late on the left once the sides change places. */
const lateAfter = ({ gains, late }: Behaviour, after: Matrix): Seconds =>
  late !== 0 && crosses(after) !== crosses(gains) ? -late : late;

/** Whether a matrix of two sides sends each mostly to the other's place. */
function crosses([left = [], right = []]: Matrix): boolean {
  const [ll = none, lr = none] = left;
  const [rl = none, rr = none] = right;
  return size(lr) * size(rl) > size(ll) * size(rr);
}
