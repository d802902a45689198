import type { Look } from "#core/checks/look.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import type { Ways } from "./ways.ts";

/** What some positions share and no others have, with everything that can be wrong in it: a branch, or at the root the trunk. */
export interface Branch {
  readonly positions: readonly string[];
  readonly faults: readonly RigFault[];
  readonly looks: readonly Look[];
  readonly below: readonly Branch[];
}

/** At most so many faults on the way to a position. */
export const mostFaults = 2;

/** A branch before its looks and what is not on the list are known. */
export interface Bare {
  readonly positions: readonly string[];
  readonly faults: readonly RigFault[];
  readonly below: readonly Bare[];
}

/** Positions that have faults in common, and these. */
interface Family {
  readonly positions: readonly string[];
  readonly faults: RigFault[];
}

/**
 * A rig as a tree, read from the ways through it: what all positions share is its root, at any depth below it what some share. Of several
 * arrangements of the same parts, a part belongs to all positions that ever have it on their way.
 */
export function treeOf(positions: readonly string[], all: readonly Ways[]): Bare {
  const families = new Map<string, Family>();
  const family = (some: readonly string[]): Family => {
    const key = some.join("\n");
    const found = families.get(key) ?? { positions: some, faults: [] };
    families.set(key, found);
    return found;
  };
  family(positions);
  for (const [fault, served] of servedBy(positions, all))
    family(positions.filter((one) => served.has(one))).faults.push(fault);
  for (const one of positions) family([one]);
  return grown(positions, nested([...families.values()]));
}

/** The positions that each fault reaches. */
function servedBy(
  positions: readonly string[],
  all: readonly Ways[],
): ReadonlyMap<RigFault, ReadonlySet<string>> {
  const serves = new Map<RigFault, Set<string>>();
  const serve = (position: string, faults: Iterable<RigFault>): void => {
    for (const fault of faults) {
      const served = serves.get(fault) ?? new Set();
      serves.set(fault, served.add(position));
    }
  };
  for (const ways of all)
    for (const position of positions)
      for (const { faults } of ways.to(position)) serve(position, faults.keys());
  return serves;
}

/** Families that overlap and neither holds the other become one. */
function nested(families: readonly Family[]): readonly Family[] {
  for (const [at, one] of families.entries()) {
    const other = families.slice(at + 1).find((next) => overlap(one, next));
    if (other === undefined) continue;
    const positions = one.positions.concat(
      other.positions.filter((id) => !one.positions.includes(id)),
    );
    const joined = { positions, faults: [...one.faults, ...other.faults] };
    const same = families.filter(
      (next) => next !== one && next !== other && sameSet(next.positions, positions),
    );
    return nested([
      { ...joined, faults: [...joined.faults, ...same.flatMap(({ faults }) => faults)] },
      ...families.filter((next) => next !== one && next !== other && !same.includes(next)),
    ]);
  }
  return families;
}

const sameSet = (a: readonly string[], b: readonly string[]): boolean =>
  a.length === b.length && a.every((id) => b.includes(id));

function overlap({ positions: a }: Family, { positions: b }: Family): boolean {
  if (a.length === 1 || b.length === 1) return false;
  const held = new Set(b);
  const common = a.filter((id) => held.has(id)).length;
  return common > 0 && common < Math.min(a.length, b.length);
}

/** The branch of these positions, and those below it. */
function grown(positions: readonly string[], families: readonly Family[]): Bare {
  const own = families.filter((one) => sameSet(one.positions, positions));
  const rest = families.filter((one) => one.positions.length < positions.length);
  const below: Bare[] = [];
  for (let left = positions; left.length > 0 && positions.length > 1; ) {
    const [first = ""] = left;
    const widest = rest
      .map((one) => one.positions)
      .filter((one) => one.includes(first))
      .reduce((wide, one) => (one.length > wide.length ? one : wide), [first]);
    const within = new Set(widest);
    below.push(
      grown(
        widest,
        rest.filter((one) => one.positions.every((id) => within.has(id))),
      ),
    );
    left = left.filter((id) => !within.has(id));
  }
  return { positions, faults: own.flatMap(({ faults }) => faults), below };
}

/** A branch and all that hang from it. */
export const withBelow = <One extends { readonly below: readonly One[] }>(
  branch: One,
): readonly One[] => [branch, ...branch.below.flatMap(withBelow)];
