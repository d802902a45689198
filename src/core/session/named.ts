import { standInFor } from "#core/rig/arranged.ts";
import { clientId, listenerOf, operatorId, type Rig } from "#core/rig/rig.ts";
import type { Entry, Log } from "./log.ts";
import { holding } from "./log.ts";

/** Whether what an entry names is there: parts and positions of the rig as the log draws it, and what may stand in for a part. */
export function namerOf(log: Log): (entry: Entry) => boolean {
  const drawing = holding(log).findLast(({ entry }) => entry === "drawing");
  if (drawing?.entry !== "drawing") return () => true;
  const names = namesIn(drawing.rig);
  return (entry) => namedBy(entry).every((name) => names.has(name) || names.has(partOf(name)));
}

/** A socket of a box is named after the box: 'mixer, phones'. */
const partOf = (place: string): string => place.slice(0, Math.max(0, place.lastIndexOf(", ")));

function namesIn({ parts, positions }: Rig): ReadonlySet<string> {
  return new Set([
    operatorId,
    clientId,
    ...parts.flatMap(({ id }) => [id, standInFor(id)]),
    ...positions.flatMap(({ id }) => [id, listenerOf(id)]),
  ]);
}

/** The parts, places and positions that an entry names. */
function namedBy(entry: Entry): readonly string[] {
  switch (entry.entry) {
    case "finding":
      return namesOf(entry.finding.asked);
    case "move":
    case "cannot":
      return namesOf(entry.move);
    case "absent":
      return [entry.position];
    case "drawing":
    case "titled":
    case "taken back":
      return [];
  }
}

const namingKeys = ["part", "place", "position", "into"] as const;

function namesOf(said: object): readonly string[] {
  const one = namingKeys.flatMap((key) => textAt(said, key));
  return "parts" in said && Array.isArray(said.parts) ? [...one, ...said.parts] : one;
}

function textAt(said: object, key: string): readonly string[] {
  const value: unknown = key in said ? said[key as keyof typeof said] : undefined;
  return typeof value === "string" ? [value] : [];
}
