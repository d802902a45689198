import type { Settings } from "#core/parts/kind.ts";
import {
  type BuiltRig,
  build,
  clientId,
  listenerOf,
  operatorId,
  type RigPart,
} from "#core/rig/rig.ts";

/** The same rig drawn anew, with something else said of its parts; nothing is remembered of the old one. */
export function redrawn(
  rig: BuiltRig,
  said: (part: RigPart) => Settings = ({ settings = {} }) => settings,
): BuiltRig {
  const people = [operatorId, clientId, ...rig.positions.map(({ id }) => listenerOf(id))];
  const parts = rig.parts.filter(({ id }) => !people.includes(id));
  return build({ ...rig, parts: parts.map((part) => ({ ...part, settings: said(part) })) });
}
