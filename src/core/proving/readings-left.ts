import type { BuiltRig } from "#core/rig/rig.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import type { Derived } from "#core/session/derive.ts";
import { readingsIn } from "./meter-belief.ts";
import { isSamePair, meterView, type Pair, shows } from "./meter-view.ts";
import type { Proof } from "./proof.ts";

/** Tells whether at two contacts something could still be wrong that no reading spoke against. */
export function untriedBy(derived: Derived, { untested }: Proof): (pair: Pair) => boolean {
  const view = meterView(derived.model.rig);
  const read = readingsIn(derived.happenings).map(({ asked }) => asked);
  return (pair) =>
    !read.some((one) => isSamePair(one, pair)) &&
    untested.some((fault) => shows(view, fault, pair));
}

/** How many readings are left where each is as it should be: those that try all that was not tried, the most at once first. */
export function readingsLeft(rig: BuiltRig, { untested }: Proof): number {
  const view = meterView(rig);
  const tries = view.pairs.map((pair) => new Set(untested.filter((one) => shows(view, one, pair))));
  let left = untested;
  for (let count = 0; ; count++) {
    const tried = (faults: ReadonlySet<RigFault>) => left.filter((one) => faults.has(one)).length;
    const [first, ...rest] = tries;
    const most = rest.reduce((a, b) => (tried(b) > tried(a) ? b : a), first ?? new Set());
    if (tried(most) === 0) return count;
    left = left.filter((one) => !most.has(one));
  }
}
