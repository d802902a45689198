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
  const through = (has: (rig: Rig) => readonly string[], key: string) =>
    rigs.every((rig) => has(rig).includes(key));
  const parts = new Map<string, string>();
  for (const part of then?.parts ?? []) {
    const key = firstName(part);
    const found = now?.parts.find((one) => firstName(one) === key);
    if (found === undefined || !through(firstNames, key)) continue;
    parts.set(part.id, found.id);
    parts.set(standInFor(part.id), standInFor(found.id));
  }
  const positions = new Set(
    (then?.positions ?? []).map(({ id }) => id).filter((id) => through(seats, id)),
  );
  return {
    part: (id) => parts.get(id),
    position: (id) => (positions.has(id) ? id : undefined),
  };
}

const firstNames = ({ parts }: Rig): readonly string[] => parts.map(firstName);
const seats = ({ positions }: Rig): readonly string[] => positions.map(({ id }) => id);
