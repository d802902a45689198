import { instrumentAt } from "#core/rig/rig.ts";
import { size } from "#core/units/complex.ts";
import type { Measured } from "./evidence.ts";
import type { Model } from "./model.ts";

/** How far real parts lie from their drawing, against the largest gain, where no instrument says. Common practice, no source. */
const usual = 0.03;
/** How widely the gains of what is not on the list may lie. */
const anywhere = 0.7;

/** How likely a measured matrix is under a behaviour of the way to a position: a normal distribution about each gain. */
export function chanceOfMatrix(
  { pool, healthy, rig }: Model,
  position: string,
  { gains, error }: Measured,
): (behaviour: number) => number {
  const largest = Math.max(...pool.behaviour(healthy(position)).gains.flat().map(size));
  const spread = Math.hypot(error, instrumentAt(rig, position)?.tolerance ?? usual);
  const misses = (behaviour: number): number =>
    pool
      .behaviour(behaviour)
      .gains.flat()
      .reduce((sum, { re, im }, at) => {
        const [real = 0, imaginary = 0] = gains[at] ?? [];
        return sum + (real - re / largest) ** 2 + (imaginary - im / largest) ** 2;
      }, 0);
  const chance = (behaviour: number): number => {
    const by = pool.behaviour(behaviour).unlisted ? anywhere : spread;
    // Eight numbers, and never quite nought: an instrument may have stood at another position.
    return (spread / by) ** 8 * Math.exp(-misses(behaviour) / (2 * by * by)) + 1e-9;
  };
  return (behaviour) =>
    pool.showings(behaviour).reduce((sum, { number, share }) => sum + share * chance(number), 0);
}
