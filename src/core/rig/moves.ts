import type { RigFault } from "./rig-faults.ts";

/** What somebody changed: everything a look can show at a place set right, or what is there replaced by a good one. */
export interface Move {
  readonly move: "set right" | "replaced";
  readonly place: string;
}

/** Whether a fault that was there before a move is still there after it. */
export const survives = (fault: RigFault, { move, place }: Move): boolean =>
  fault.place !== place || (move === "set right" && !fault.seen);
