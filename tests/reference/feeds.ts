import type { PartKind } from "#core/parts/catalogue.ts";
import type { Settings } from "#core/parts/kind.ts";
import { type Ends, type Patch, rigOf } from "#core/patching/patch.ts";
import { type Prediction, predictionAt } from "#core/patching/prediction.ts";
import { type BuiltRig, build } from "#core/rig/rig.ts";

/** A box into a headphone amplifier with one listener. The box is called 'source', the lead 'lead'. */
export const ends = (
  kind: PartKind,
  settings: Settings = {},
  amplifier: Settings = { supply: "mains-earthed" },
): Ends => ({
  from: { id: "source", kind, settings },
  into: { id: "amplifier", kind: "headphone amplifier", settings: amplifier },
  worn: { id: "headphones", kind: "headphones" },
});

/** Where the plugs of one lead go. */
export type Plugs = readonly (readonly [plug: string, into: string, socket: string])[];

/** One lead of a kind between two ends. */
export const byLead = (kind: PartKind, plugs: Plugs): Patch => ({
  wires: [{ id: "lead", kind }],
  plugged: plugs.map(([plug, into, socket]) => ({ part: "lead", plug, into, socket })),
});

export const rigWith = (between: Ends, patch: Patch): BuiltRig =>
  build(rigOf(between, patch, "output 1"));

/** What arrives at the amplifier. */
export const predicted = (between: Ends, patch: Patch): Prediction =>
  predictionAt(rigWith(between, patch), between.into.id);

/** A lead with one plug at each end, from a socket of the source. */
export const single = (socket: string): Plugs => [
  ["near", "source", socket],
  ["far", "amplifier", "in"],
];

/** An insert Y from two sockets of the source. */
export const forked = (left: string, right: string): Plugs => [
  ["left", "source", left],
  ["right", "source", right],
  ["stem", "amplifier", "in"],
];

export const mains = ["main left", "main right"] as const;
