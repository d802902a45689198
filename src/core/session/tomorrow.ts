import { type Arranged, standInFor } from "#core/rig/arranged.ts";
import type { Rig, RigPart } from "#core/rig/rig.ts";
import { derive } from "./derive.ts";
import { type Log, type Said, titleOf } from "./log.ts";

/**
 * What a new session begins with that goes on with the rig of this one as it is now: what moves left plugged where, what was replaced, what
 * it is called and who does it. No finding comes along. Nothing where no entry says what the rig is.
 */
export function tomorrowOf(log: Log): readonly Said[] {
  const derived = derive(log);
  if (derived === undefined) return [];
  const { moves, state } = derived.evidence.era.course;
  const replaced = new Set(moves.flatMap((one) => (one.move === "replaced" ? [one.place] : [])));
  const title = titleOf(log);
  return [
    { entry: "drawing", rig: overnight(state, replaced) },
    ...(Object.keys(title).length === 0 ? [] : [{ entry: "titled", ...title } as const]),
  ];
}

/**
 * A stand-in takes the name of the part that was laid aside, and is one like any other by tomorrow; what is turned round on a head is
 * turned back, and new parts were tried by now.
 */
function overnight({ rig, before }: Arranged, replaced: ReadonlySet<string>): Rig {
  const aside = new Set([...before.keys()].filter((id) => isIn(rig, standInFor(id))));
  const own = new Map([...aside].map((id) => [standInFor(id), id]));
  const named = (id: string): string => own.get(id) ?? id;
  const tried = (part: RigPart): RigPart => {
    const stand = rig.parts.find(({ id }) => aside.has(part.id) && id === standInFor(part.id));
    if (stand !== undefined) return { ...without(stand, "good", "untried"), id: part.id };
    return replaced.has(part.id) ? without(part, "untried") : part;
  };
  return {
    ...rig,
    parts: rig.parts.filter(({ id }) => !own.has(id)).map(tried),
    plugged: rig.plugged
      .filter(({ part }) => !aside.has(part))
      .map((one) => ({ ...one, part: named(one.part), into: named(one.into) })),
    positions: rig.positions.map(({ turned: _, ...one }) => ({ ...one, wears: named(one.wears) })),
  };
}

const isIn = ({ parts }: Rig, id: string): boolean => parts.some((part) => part.id === id);

const without = (part: RigPart, ...names: readonly (keyof RigPart)[]): RigPart =>
  Object.fromEntries(
    Object.entries(part).filter(([name]) => !names.includes(name as keyof RigPart)),
  ) as unknown as RigPart;
