import { instrumentAt } from "#core/rig/rig.ts";
import { size } from "#core/units/complex.ts";
import type { Probability } from "#core/units/units.ts";
import type { Measured } from "./evidence.ts";
import type { Model } from "./model.ts";

/** How far real parts lie from their drawing, against the largest gain, where no instrument says. Common practice, no source. */
const usual = 0.03;
/** How widely the gains of what is not on the list may lie. */
const anywhere = 0.7;
/** How often an instrument stood at another position, or measured something else. Common practice, no source. */
const astray: Probability = 1e-3;

/**
 * How likely a measured matrix is under a behaviour of the way to a position: a normal distribution about each gain. Of several measurements with
 * nothing touched only the noise is drawn anew: what the parts lie off by is the same in all of them, and is shared out.
 */
export function chanceOfMatrix(
  { pool, healthy, rig }: Model,
  position: string,
  { gains, error, free }: Measured,
  times = 1,
): (behaviour: number) => number {
  const largest = Math.max(...pool.behaviour(healthy(position)).gains.flat().map(size));
  const own = instrumentAt(rig, position)?.tolerance ?? usual;
  // As it comes, what the inputs and outputs differ by is in it too.
  const tolerance = free ? Math.max(own, usual) : own;
  const spread = Math.hypot(error, tolerance * Math.sqrt(times));
  const misses = (behaviour: number): number => {
    const predicted = pool.behaviour(behaviour).gains.flat();
    const flat = predicted.map(({ re, im }) => [re / largest, im / largest] as const);
    const by = free ? levelOf(gains, flat) : 1;
    return flat.reduce((sum, [re, im], at) => {
      const [real = 0, imaginary = 0] = gains[at] ?? [];
      return sum + (real - by * re) ** 2 + (imaginary - by * im) ** 2;
    }, 0);
  };
  // Four gains may be anything; their imaginary parts are near nought whatever is wrong.
  const wide = Math.min(1, spread / anywhere) ** 4;
  const chance = (behaviour: number): number => {
    const unlisted = pool.behaviour(behaviour).unlisted;
    const by = unlisted ? anywhere : spread;
    return (unlisted ? wide : 1) * Math.exp(-misses(behaviour) / (2 * by * by)) + astray * wide;
  };
  return (behaviour) =>
    pool.showings(behaviour).reduce((sum, { number, share }) => sum + share * chance(number), 0);
}

/** A level that was not calibrated lies within so many times of what it should be (common practice, no source). */
const furthest = 10;

type Parts = readonly (readonly [re: number, im: number])[];

/** The factor by which predicted gains come nearest to measured ones. */
function levelOf(measured: Parts, predicted: Parts): number {
  const product = (a: Parts, b: Parts) =>
    a.reduce((sum, [re, im], at) => sum + re * (b[at]?.[0] ?? 0) + im * (b[at]?.[1] ?? 0), 0);
  const all = product(predicted, predicted);
  const nearest = all > 0 ? product(measured, predicted) / all : 1;
  return Math.min(furthest, Math.max(1 / furthest, nearest));
}
