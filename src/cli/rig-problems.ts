import { build, type PartKind, partCatalogue, type Rig, type RigPart } from "#core/index.ts";
import { type BuiltRig, clientId, listenerOf, operatorId } from "#core/rig/rig.ts";
import { feedingProblems } from "./feeding-problems.ts";
import { isPart, noPart, plugProblems } from "./plug-problems.ts";
import type { Path, Problem } from "./problem.ts";

/** What keeps a rig from being one, with paths from `at`; nothing where it can be built and every position is fed. */
export function rigProblems(rig: Rig, at: Path): readonly Problem[] {
  const parts = [
    ...repeated(rig.parts, peopleIn(rig), [...at, "parts"]),
    ...rig.parts.flatMap((part, index) =>
      partProblems(part, peopleIn(rig), [...at, "parts", index]),
    ),
  ];
  if (parts.length > 0) return parts;
  const built = build(rig);
  const joins = [
    ...built.plugged.flatMap((_, index) => plugProblems(built, index, at)),
    ...seatProblems(built, at),
  ];
  return joins.length > 0 ? joins : feedingProblems(built, at);
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
const repeated = (
  all: readonly { readonly id: string; readonly kind?: PartKind }[],
  people: People,
  at: Path,
): readonly Problem[] =>
  all.flatMap(({ id, kind }, index) =>
    (people.has(id) && people.get(id) !== kind) || all.findIndex((one) => one.id === id) < index
      ? [{ path: [...at, index, "id"], expected: "an id that nothing else has", found: id }]
      : [],
  );

function partProblems(
  { id, kind, settings = {} }: RigPart,
  people: People,
  at: Path,
): readonly Problem[] {
  const { family, parameters, make } = partCatalogue[kind];
  if (family === "person" && people.get(id) !== kind)
    return [{ path: [...at, "kind"], expected: "no person: they are added", found: kind }];
  const refused = (some: Readonly<Record<string, number | string>>): string | undefined => {
    try {
      make(some);
    } catch (error) {
      if (error instanceof RangeError) return error.message.replace(/^.* is not /s, "");
      throw error;
    }
    return undefined;
  };
  const single = Object.entries(settings).flatMap(([name, value]): Problem[] => {
    const expected = Object.hasOwn(parameters, name) ? refused({ [name]: value }) : undefined;
    return expected === undefined
      ? []
      : [{ path: [...at, "settings", name], expected, found: value }];
  });
  if (single.length > 0) return single;
  const together = refused(settings);
  return together === undefined
    ? []
    : [{ path: [...at, "settings"], expected: `settings that go together: ${together}` }];
}

function seatProblems(rig: BuiltRig, at: Path): readonly Problem[] {
  const path = [...at, "positions"];
  if (rig.positions.length === 0) return [{ path, expected: "at least one position" }];
  const seats = rig.positions.flatMap(({ wears }, index): Problem[] => {
    const amiss = (expected: string): Problem[] => [
      { path: [...path, index, "wears"], expected, found: wears },
    ];
    if (!isPart(rig, wears)) return [noPart([...path, index, "wears"], wears)];
    if (rig.part(wears).family !== "headphones" && rig.part(wears).measures === undefined)
      return amiss("headphones, in-ears or an instrument");
    return rig.positions.slice(0, index).some((one) => one.wears === wears)
      ? amiss("headphones that nobody else wears")
      : [];
  });
  return [...repeated(rig.positions, new Map(), path), ...seats];
}
