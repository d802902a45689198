import type { Noise } from "#core/checks/noise.ts";
import type { FaultName } from "#core/parts/fault-names.ts";
import type { BuiltRig } from "#core/rig/rig.ts";
import { type RigFault, rigFaults } from "#core/rig/rig-faults.ts";
import { wayTo } from "./way.ts";

/**
 * Faults that the checks by ear find, since they change what comes left and right, and that bring a noise with them: a pad that is in makes everybody turn up
 * behind it, and the hiss comes up too; a ganged knob that is uneven is worn, and crackles.
 */
const also: Readonly<Record<Noise, readonly FaultName[]>> = {
  hiss: ["pad in on the left channel", "pad in on the right channel", "dim on"],
  hum: ["return spring of the socket worn"],
  crackle: ["volume knob uneven, left weaker", "volume knob uneven, right weaker"],
  distortion: [],
};

/** Those of them that may be on the way to a position. */
export function soundsAs(rig: BuiltRig, position: string, noise: Noise): readonly RigFault[] {
  const way = wayTo(rig, position);
  if (way === undefined) return [];
  const outputs = new Set(way.boxes.map(({ part, socket }) => `${part}, ${socket}`));
  const parts = new Set(way.boxes.map(({ part }) => part));
  return rigFaults(rig).filter(
    ({ name, part, place }) =>
      also[noise].includes(name) && parts.has(part) && (place === part || outputs.has(place)),
  );
}
