import { size } from "#core/units/complex.ts";
import type { Probability } from "#core/units/units.ts";
import type { Pool } from "./pool.ts";

/**
 * So many times its tolerance two matrices lie apart, all gains together, before an instrument tells one from the other: with a normal
 * distribution about each, one measurement then speaks ninety times as loudly for the right one.
 */
const enough = 3;

/** How often what comes and goes must show what the other does not. As of answers by ear. */
const often: Probability = 0.05;

/**
 * Tells whether an instrument of some tolerance, against the largest gain of a healthy chain, would show one behaviour otherwise than another.
 */
export function toldByInstrument(
  pool: Pool,
  tolerance: number,
  healthy: number,
): (a: number, b: number) => boolean {
  const largest = Math.max(...pool.behaviour(healthy).gains.flat().map(size));
  const alike = (a: number, b: number): boolean => {
    const [one, other] = [pool.behaviour(a), pool.behaviour(b)];
    if (one.unlisted || other.unlisted) return one.unlisted === other.unlisted;
    const [gains, others] = [one.gains.flat(), other.gains.flat()];
    const square = gains.reduce((sum, { re, im }, at) => {
      const { re: x = 0, im: y = 0 } = others[at] ?? {};
      return sum + (re - x) ** 2 + (im - y) ** 2;
    }, 0);
    return Math.sqrt(square) <= enough * tolerance * largest;
  };
  const share = (of: number, like: number): Probability =>
    pool
      .showings(of)
      .reduce((sum, { number, share: each }) => sum + (alike(number, like) ? each : 0), 0);
  return (a, b) =>
    a !== b &&
    [a, b]
      .flatMap((one) => pool.showings(one))
      .some(({ number }) => Math.abs(share(a, number) - share(b, number)) > often);
}
