import type { Complaint } from "#core/checks/complaints.ts";
import type { StandInFeed } from "#core/rig/stand-ins.ts";

/** What is known so far of one complaint and of the rig it came from. What is left out was not asked yet. */
export interface Told {
  /** What was said; several where it was not clear. */
  readonly said?: readonly Complaint[];
  /** What the headphones hang on, or the rig that the log has drawn. */
  readonly feed?: StandInFeed | "rig in hand";
  readonly worn?: "headphones" | "in-ears" | "don't know";
  /** How many hear it. */
  readonly listeners?: number;
  /** Who complains, in the rig in hand. */
  readonly seat?: string;
  /** Who else hears it so. */
  readonly others?: "all" | "none" | "don't know";
}

/** What is asked, one at a time. */
export type Step = keyof Required<Told>;

/** In the order in which they are asked. */
export const steps = ["said", "feed", "worn", "listeners", "seat", "others"] as const;

/** As it was before the last answer; nothing where there was none. */
export function unsaid(told: Told): Told | undefined {
  const last = steps.findLast((step) => told[step] !== undefined);
  if (last === undefined) return undefined;
  const { [last]: _, ...rest } = told;
  return rest;
}
