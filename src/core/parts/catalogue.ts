import { headphoneAmplifier } from "./amplifier.ts";
import { headphones } from "./headphones.ts";
import { insertY } from "./insert-y.ts";
import { laptop } from "./laptop.ts";
import { oneToBoth, trsLead, tsLead } from "./leads.ts";
import { type Balancing, mixer } from "./mixer.ts";
import type { Part, PartKind } from "./part.ts";
import { listener, operator } from "./people.ts";

/** What may be said of a part besides its kind. */
export interface PartSettings {
  /** How many outputs an amplifier has. */
  readonly outputs?: number;
  /** What drives the ring of a mixer's balanced outputs. */
  readonly balancing?: Balancing;
}

/** Every kind of part, written by hand: one line adds one. */
export const catalogue: Readonly<Record<PartKind, (settings: PartSettings) => Part>> = {
  laptop,
  mixer: ({ balancing }) => mixer(balancing),
  "TRS lead": trsLead,
  "TS lead": tsLead,
  "insert Y": insertY,
  "one-to-both lead": oneToBoth,
  "headphone amplifier": ({ outputs = 1 }) => headphoneAmplifier(outputs),
  headphones: () => headphones(),
  listener,
  operator,
};
