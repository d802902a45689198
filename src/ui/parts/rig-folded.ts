import type { Join, Twig } from "#core/drawing/hanging.ts";
import type { BuiltRig, Position } from "#core/rig/rig.ts";

/** From so many on, ways of one kind are folded into a run of taps. */
const most = 8;

/** Ways that are alike, each to one position. */
export interface Run {
  readonly joins: readonly Join[];
  readonly seats: readonly Position[];
}

/** What hangs on a box: single ways, and where there are many alike, runs of them. */
export function foldedOn(rig: BuiltRig, { joins }: Twig): readonly (Join | Run)[] {
  const alike = new Map<string, Join[]>();
  for (const join of joins) {
    const kind = kindOf(rig, join);
    if (kind !== undefined) alike.set(kind, [...(alike.get(kind) ?? []), join]);
  }
  const folded = new Map<Join, Run | undefined>();
  for (const same of alike.values()) {
    const [first] = same;
    if (same.length <= most || first === undefined) continue;
    for (const join of same) folded.set(join, undefined);
    folded.set(first, { joins: same, seats: same.flatMap((join) => seatsBy(rig, join)) });
  }
  return joins.flatMap((join): (Join | Run)[] => {
    if (!folded.has(join)) return [join];
    const run = folded.get(join);
    return run === undefined ? [] : [run];
  });
}

/** What a way to one position is made of; nothing where it leads to several, or to none. */
function kindOf(rig: BuiltRig, join: Join): string | undefined {
  const { leads, twig } = join;
  if (twig === undefined || twig.joins.length > 1) return undefined;
  const [next] = twig.joins;
  const rest = next === undefined ? endOf(rig, twig) : kindOf(rig, next);
  return rest && [...leads.map((id) => rig.part(id).kind), rig.part(twig.part).kind, rest].join();
}

const endOf = (rig: BuiltRig, { part }: Twig): string | undefined =>
  rig.positions.some(({ wears }) => wears === part) ? "worn" : undefined;

const seatsBy = (rig: BuiltRig, { twig }: Join): readonly Position[] => {
  if (twig === undefined) return [];
  const here = rig.positions.filter(({ wears }) => wears === twig.part);
  return [...here, ...twig.joins.flatMap((join) => seatsBy(rig, join))];
};

/** What things take of a line from left to right, in CSS pixels, as the style sheet has them. */
const [box, adapter, ends, lead, cord, seat] = [114, 114, 70, 44, 22, 160];

/** How wide a picture from left to right would be. */
export function widthOf(rig: BuiltRig, { part, joins }: Twig): number {
  const { sockets, plugs } = rig.part(part);
  const own = plugs.length > 0 && sockets.length === 1 ? adapter : box;
  return own + Math.max(0, ...joins.map((join) => widthBy(rig, join)));
}

function widthBy(rig: BuiltRig, { leads, twig }: Join): number {
  const way = leads.length === 0 ? ends + cord : 2 * ends + lead;
  if (twig === undefined) return way;
  const worn = rig.positions.some(({ wears }) => wears === twig.part);
  return way + (worn ? seat : widthOf(rig, twig));
}
