import type { Connection, Rig, RigPart } from "#core/rig/rig.ts";

/** What somebody has at two ends: the box it comes from, and what it shall go into; an amplifier, or the headphones themselves. */
export interface Ends {
  readonly from: RigPart;
  readonly into: RigPart;
  /** What is heard in the end, where it goes into an amplifier. */
  readonly worn?: RigPart;
}

/** Leads and adapters between two ends, and where each plug goes. */
export interface Patch {
  readonly wires: readonly RigPart[];
  readonly plugged: readonly Connection[];
}

/** The one listener of a patch. */
export const seat = "position 1";

/** A patch as a rig with one listener. The headphones hang on the amplifier's first output. */
export function rigOf({ from, into, worn }: Ends, { wires, plugged }: Patch, out?: string): Rig {
  const heard = worn ?? into;
  const onAmplifier: readonly Connection[] =
    worn === undefined || out === undefined
      ? []
      : [{ part: worn.id, plug: "plug", into: into.id, socket: out }];
  return {
    name: "patch",
    parts: [from, ...wires, into, ...(worn === undefined ? [] : [worn])],
    plugged: [...plugged, ...onAmplifier],
    positions: [{ id: seat, name: "1", wears: heard.id }],
  };
}
