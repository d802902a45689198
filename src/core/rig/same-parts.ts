import { standInFor } from "./arranged.ts";
import type { Rig, RigPart } from "./rig.ts";

/** What a part was called when it was first drawn: by this it is known through every drawing. */
export const firstName = ({ id, first }: RigPart): string => first ?? id;

/** What something of one drawing is called in a later one; nothing where it is there no more. */
export interface Names {
  readonly part: (id: string) => string | undefined;
  readonly position: (id: string) => string | undefined;
}

/**
 * How names of the first of some drawings, each made after the one before, are spoken in the last. What was missing in any between them is
 * another thing, though it may bear the same name.
 */
export function namesThrough(rigs: readonly Rig[]): Names {
  const [then, now] = [rigs[0], rigs.at(-1)];
  const isThrough = throughAll(rigs.map((rig) => rig.parts.map(firstName)));
  const isKept = throughAll(rigs.map((rig) => rig.positions.map(({ id }) => id)));
  const parts = new Map<string, string>();
  for (const part of then?.parts ?? []) {
    const key = firstName(part);
    const found = now?.parts.find((one) => firstName(one) === key);
    if (found === undefined || !isThrough(key)) continue;
    parts.set(part.id, found.id);
    parts.set(standInFor(part.id), standInFor(found.id));
  }
  const positions = new Set((then?.positions ?? []).map(({ id }) => id).filter(isKept));
  return {
    part: (id) => parts.get(id),
    position: (id) => (positions.has(id) ? id : undefined),
  };
}

/** Whether a name stands in every one of some lists. */
function throughAll(lists: readonly (readonly string[])[]): (name: string) => boolean {
  const sets = lists.map((list) => new Set(list));
  return (name) => sets.every((set) => set.has(name));
}
