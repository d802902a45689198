import type { Model } from "#core/diagnosis/model.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";

/** The fault of an id, where the rig can have it. */
export const faultById = ({ branches }: Model, id: string): RigFault | undefined =>
  branches.flatMap(({ faults }) => faults).find((fault) => fault.id === id);
