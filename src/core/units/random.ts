/** Uniform numbers from zero up to one. */
export type Random = () => number;

/**
 * A seeded stream of uniform numbers (mulberry32, public domain): the same seed gives the same stream everywhere.
 * Chance enters the core only through an argument of this type.
 */
export function seeded(seed: number): Random {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}
