import type { Random } from "#core/units/random.ts";

/** One of some, as often as it weighs. Throws where there is none. */
export function drawn<One>(
  all: readonly [One, ...One[]],
  weight: (one: One) => number,
  random: Random,
): One {
  let left = random() * all.reduce((sum, one) => sum + weight(one), 0);
  for (const one of all) {
    left -= weight(one);
    if (left < 0) return one;
  }
  return all[0];
}

/** In an order of chance. */
export function shuffled<One>(all: readonly One[], random: Random): readonly One[] {
  const keyed = all.map((one) => ({ one, key: random() }));
  return keyed.sort((a, b) => a.key - b.key).map(({ one }) => one);
}
