import type { Move } from "#core/rig/moves.ts";
import { operatorId } from "#core/rig/rig.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";

/** The move that answers a fault, and what is pressed when it is done. */
export function moveFor({ seen, place }: RigFault): { readonly move: Move; readonly done: string } {
  const move: Move = { move: seen ? "set right" : "replaced", place };
  if (place === operatorId) return { move, done: "Somebody else writes now, check again" };
  if (!seen && place.endsWith(": listener"))
    return { move, done: "Somebody else listens now, check again" };
  return { move, done: "Done, check again" };
}
