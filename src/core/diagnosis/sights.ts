import { type Look, sightsOf } from "#core/checks/look.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";

type FaultLists = readonly (readonly RigFault[])[];

/** Which of a look's answers each fault set would show: the different cases, and for each set the number of its case. */
export interface Showing {
  readonly shown: readonly (readonly string[])[];
  readonly which: Int32Array;
}

const showings = new WeakMap<FaultLists, Map<Look, Showing>>();

/** Remembered by the identity of the list of sets. */
export function showing(look: Look, sets: FaultLists): Showing {
  const memory = showings.get(sets) ?? new Map<Look, Showing>();
  showings.set(sets, memory);
  const known = memory.get(look);
  if (known !== undefined) return known;
  const cases = new Map<string, number>();
  const shown: (readonly string[])[] = [];
  const which = Int32Array.from(sets, (faults) => {
    const there = sightsOf(look, faults);
    const key = there.join();
    const at = cases.get(key) ?? shown.push(there) - 1;
    cases.set(key, at);
    return at;
  });
  memory.set(look, { shown, which });
  return { shown, which };
}
