import { catalogue, type PartKind } from "#core/parts/catalogue.ts";
import { feedTroubles } from "./feed-troubles.ts";
import { isPart, plugTroubles } from "./plug-troubles.ts";
import {
  type BuiltRig,
  build,
  clientId,
  listenerOf,
  operatorId,
  type Rig,
  type RigPart,
} from "./rig.ts";
import type { RigTrouble } from "./trouble.ts";

/** What keeps a rig from being one; nothing where it can be built and every position is fed. */
export function rigTroubles(rig: Rig): readonly RigTrouble[] {
  const people = peopleIn(rig);
  const parts = [
    ...repeated(rig.parts, people, "parts"),
    ...rig.parts.flatMap((part, index) => partTroubles(part, people, index)),
  ];
  if (parts.length > 0) return parts;
  const built = build(rig);
  const joins = [
    ...built.plugged.flatMap((_, index) => plugTroubles(built, index)),
    ...seatTroubles(built),
  ];
  return joins.length > 0 ? joins : feedTroubles(built);
}

type People = ReadonlyMap<string, PartKind>;

/** The people, who are parts as well: what kind each id is of. */
const peopleIn = ({ positions }: Rig): People =>
  new Map<string, PartKind>([
    [operatorId, "operator"],
    [clientId, "client"],
    ...positions.map(({ id }) => [listenerOf(id), "listener"] as const),
  ]);

/** Ids that are taken already: a person's by whatever is no such person. */
function repeated(
  all: readonly { readonly id: string; readonly kind?: PartKind }[],
  people: People,
  of: "parts" | "positions",
): readonly RigTrouble[] {
  const met = new Set<string>();
  return all.flatMap(({ id, kind }, index): RigTrouble[] => {
    const taken = met.has(id) || (people.has(id) && people.get(id) !== kind);
    met.add(id);
    return taken ? [{ trouble: "name taken", of, index, id }] : [];
  });
}

function partTroubles(
  { id, kind, settings = {} }: RigPart,
  people: People,
  index: number,
): readonly RigTrouble[] {
  const { family, parameters } = catalogue[kind];
  if (family === "person" && people.get(id) !== kind)
    return [{ trouble: "a person", index, id, kind }];
  const single = Object.entries(settings).flatMap(([name, value]): RigTrouble[] => {
    const understood = Object.hasOwn(parameters, name)
      ? refused(kind, { [name]: value })
      : undefined;
    return understood === undefined
      ? []
      : [{ trouble: "setting", index, id, name, value, understood }];
  });
  if (single.length > 0) return single;
  const understood = refused(kind, settings);
  return understood === undefined ? [] : [{ trouble: "settings together", index, id, understood }];
}

/** What a kind would understand in place of some settings; nothing where it understands them. */
function refused(
  kind: PartKind,
  settings: Readonly<Record<string, number | string>>,
): string | undefined {
  try {
    catalogue[kind].make(settings);
  } catch (error) {
    if (error instanceof RangeError) return error.message.replace(/^.* is not /s, "");
    throw error;
  }
  return undefined;
}

function seatTroubles(rig: BuiltRig): readonly RigTrouble[] {
  if (rig.positions.length === 0) return [{ trouble: "nobody listens" }];
  const worn = new Set<string>();
  const seats = rig.positions.flatMap(({ id: position, wears }, index): RigTrouble[] => {
    const at = { index, position, id: wears };
    if (!isPart(rig, wears)) return [{ trouble: "worn is no part", ...at }];
    if (rig.part(wears).family !== "headphones" && rig.part(wears).measures === undefined)
      return [{ trouble: "not to be worn", ...at }];
    const twice = worn.has(wears);
    worn.add(wears);
    return twice ? [{ trouble: "worn twice", ...at }] : [];
  });
  return [...repeated(rig.positions, new Map(), "positions"), ...seats];
}
