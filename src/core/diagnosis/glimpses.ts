import type { RigFault } from "#core/rig/rig-faults.ts";
import type { Probability } from "#core/units/units.ts";
import type { Grown } from "./grown.ts";

/** Something that tells of faults themselves, whatever is heard: a look, a meter's reading, a plug twisted. */
export interface Glimpsed {
  /** The branch that has most of the faults it is about. */
  readonly branch: Grown;
  readonly epoch: number;
  readonly about: (fault: RigFault) => boolean;
  /** How likely it was, given those faults that were there of the ones it is about. */
  readonly chance: (faults: readonly RigFault[]) => Probability;
}

type FaultLists = readonly (readonly RigFault[])[];

/** The likelihood of a glimpse for each of some fault sets; each case is worked out once. */
export function glimpses({ about, chance }: Glimpsed, sets: FaultLists): Float64Array {
  const known = new Map<string, Probability>();
  return Float64Array.from(sets, (faults) => {
    const there = faults.filter(about);
    const key = there.map(({ id }) => id).join();
    const found = known.get(key) ?? chance(there);
    known.set(key, found);
    return found;
  });
}
