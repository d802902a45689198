import fc from "fast-check";
import type { RigFault } from "#core/rig/rig-faults.ts";

/** No two of one slot: those cannot both be there. */
const together = (faults: readonly RigFault[]): readonly RigFault[] =>
  faults.filter(
    ({ part, slot }, at) =>
      faults.findIndex((one) => one.part === part && one.slot === slot) === at,
  );

/** Up to three of some faults that can be there at once. */
export const someOf = (faults: readonly RigFault[]): fc.Arbitrary<readonly RigFault[]> =>
  faults.length === 0
    ? fc.constant([])
    : fc.array(fc.constantFrom(...faults), { maxLength: 3 }).map(together);
