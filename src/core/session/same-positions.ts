import type { Position, Rig } from "#core/rig/rig.ts";
import { firstName } from "#core/rig/same-parts.ts";

/**
 * The positions of a rig with those of an earlier one that they are, each once: by the name on the tape, else, where much else is the same, by what is
 * worn there. Ids are numbers, which any two rigs share: they tell nothing. Nothing where it is another rig.
 */
export function samePositions(then: Rig, now: Rig): ReadonlyMap<Position, Position> {
  const pairs = new Map<Position, Position>();
  const [wornThen, wornNow] = [wornIn(then), wornIn(now)];
  pair(pairs, then, now, (old, one) => old.name === one.name);
  if (areAlike(then, now))
    pair(pairs, then, now, (old, one) => {
      const worn = wornNow(one);
      return worn !== undefined && worn === wornThen(old);
    });
  return pairs;
}

function pair(
  pairs: Map<Position, Position>,
  then: Rig,
  now: Rig,
  same: (old: Position, one: Position) => boolean,
): void {
  const met = new Set(pairs.values());
  for (const one of now.positions) {
    if (pairs.has(one)) continue;
    const old = then.positions.find((each) => !met.has(each) && same(each, one));
    if (old === undefined) continue;
    pairs.set(one, old);
    met.add(old);
  }
}

const wornIn =
  ({ parts }: Rig) =>
  ({ wears }: Position): string | undefined =>
    parts.filter(({ id }) => id === wears).map(keyOf)[0];

/** What tells a part from others: what it was called first, and what it is. */
const keyOf = (part: Rig["parts"][number]): string => `${firstName(part)} / ${part.kind}`;

/** So much of two rigs is the same where one is the other with new tapes. Common practice, no source. */
const most = 0.5;

/** What parts are called is counted too: any two rooms have 'headphones 1'. So the rig must be called the same besides. */
function areAlike(then: Rig, now: Rig): boolean {
  if (then.name !== now.name) return false;
  const old = new Set(then.parts.map(keyOf));
  const same = now.parts.filter((part) => old.has(keyOf(part)));
  return same.length > most * Math.max(then.parts.length, now.parts.length);
}

/** Parts of a rig that another has not, whatever it calls them. */
export function partsMissing(from: Rig, to: Rig): readonly string[] {
  const there = new Set(to.parts.map(firstName));
  return from.parts.filter((part) => !there.has(firstName(part))).map(({ id }) => id);
}
