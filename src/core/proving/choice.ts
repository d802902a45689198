import type { PartKind } from "#core/parts/catalogue.ts";
import type { Settings } from "#core/parts/kind.ts";
import type { Grounds } from "#core/parts/line-inputs.ts";
import type { Balancing } from "#core/parts/stages.ts";
import type { Rig } from "#core/rig/rig.ts";
import type { Ohms } from "#core/units/units.ts";

/**
 * How a lead is proved: back into line inputs, into a load box, by ear with gear that is known to be good, or by a multimeter with both ends
 * in the air.
 */
export const methods = ["return", "load box", "ear", "meter"] as const;
export type Method = (typeof methods)[number];

/** What a lead is to be, and how it is proved. */
export interface LeadChoice {
  readonly kind: PartKind;
  readonly settings?: Settings;
  readonly by: Method;
  /** How the outputs that drive it are made, where they carry one signal each; as usual where it is left out. */
  readonly stage?: { readonly balancing: Balancing; readonly ohms?: Ohms };
  /** What a plug of three contacts carries: both sides of a stereo feed, as usual, or one balanced line. */
  readonly carries?: "two sides" | "one balanced line";
  /** Whether what measures it has the ground of what drives it, as it has in one interface. */
  readonly grounds?: Grounds;
}

/** The lead and the way of proving it that a rig is drawn for. */
type Proved = Pick<LeadChoice, "kind" | "by">;

/** What such a rig is called: by this it is known for one. */
export const nameFor = ({ kind, by }: Proved): string => `${kind}, proved by ${by}`;

/** The lead that a rig is drawn to prove, and how; nothing where it is any other rig. */
export function provedIn({ name, parts }: Pick<Rig, "name" | "parts">): Proved | undefined {
  const all = methods.flatMap((by) => parts.map(({ kind }) => ({ kind, by })));
  return all.find((one) => name.endsWith(nameFor(one)));
}
