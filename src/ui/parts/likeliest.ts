import type { Group } from "#core/diagnosis/groups.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";

/** The faults of a group, the likeliest first: nothing found tells them apart, so their odds beforehand do. */
export const byOdds = ({ faults }: Group): readonly RigFault[] =>
  [...faults].sort((a, b) => b.weight - a.weight);
