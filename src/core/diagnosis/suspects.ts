import type { RigFault } from "#core/rig/rig-faults.ts";
import type { Probability } from "#core/units/units.ts";
import type { Beliefs } from "./beliefs.ts";
import type { Branch } from "./branch.ts";
import type { Group } from "./groups.ts";
import type { Grown } from "./grown.ts";
import type { Model } from "./model.ts";

/** A group with how likely it is that one of its faults is there now. */
export interface Suspect {
  readonly group: Group;
  readonly probability: Probability;
}

/** Sets less likely than this make nobody a suspect. */
const negligible: Probability = 1e-9;

/** Every group, the likeliest first, and in each its likeliest fault. What cannot be heard is left out: it is never named as a verdict. */
export const suspectsOf = (groups: readonly Group[], beliefs: Beliefs): readonly Suspect[] =>
  ranked(groups, beliefs, (branch) => beliefs.sets(branch).faults);

/** Groups that had a fault on the way to a position and have it no more: what a move took away or laid aside, the likeliest first. */
export function culpritsOf(
  groups: readonly Group[],
  beliefs: Beliefs,
  position: string,
): readonly Suspect[] {
  const { era } = beliefs;
  if (era.course.now === 0) return [];
  const way = era.onTheWay(position);
  const gone = (branch: Grown): FaultLists => {
    const now = branch.setsAt(era.course.now);
    return branch
      .setsAt(0)
      .map((faults, at) => faults.filter((fault) => !way.has(fault) || !now[at]?.includes(fault)));
  };
  const were = new Set(
    era.branches.flatMap((one) => (one.positions.includes(position) ? one.faults : [])),
  );
  const some = groups.filter(({ faults }) => faults.some((fault) => were.has(fault)));
  return ranked(some, beliefs, gone).filter(({ probability }) => probability > 0.01);
}

type FaultLists = readonly (readonly RigFault[])[];

function ranked(
  groups: readonly Group[],
  beliefs: Beliefs,
  lists: (branch: Grown) => FaultLists,
): readonly Suspect[] {
  const audible = groups.filter(({ inaudible }) => !inaudible);
  const home = new Map(audible.flatMap((group) => group.faults.map((fault) => [fault, group])));
  const chances = chancesOf(home, beliefs, lists);
  const chance = (one: Group | RigFault): Probability => chances.get(one) ?? 0;
  const ordered = (group: Group): Group =>
    beliefs.era.course.now === 0
      ? group
      : { ...group, faults: [...group.faults].sort((a, b) => chance(b) - chance(a)) };
  return audible
    .map((group): Suspect => ({ group: ordered(group), probability: chance(group) }))
    .sort((a, b) => b.probability - a.probability);
}

/** How likely each fault is to be in the lists of its branch, and each group to have one of its faults there. */
function chancesOf(
  home: ReadonlyMap<RigFault, Group>,
  beliefs: Beliefs,
  lists: (branch: Grown) => FaultLists,
): ReadonlyMap<Group | RigFault, Probability> {
  const chances = new Map<Group | RigFault, Probability>();
  const add = (one: Group | RigFault | undefined, probability: Probability): void => {
    if (one !== undefined) chances.set(one, (chances.get(one) ?? 0) + probability);
  };
  const count = ([first, second]: readonly RigFault[], probability: Probability): void => {
    const group = first && home.get(first);
    const other = second && home.get(second);
    for (const one of [first, second, group]) add(one, probability);
    if (other !== group) add(other, probability);
  };
  const suspected = ({ faults }: Branch) => faults.some((fault) => home.has(fault));
  for (const branch of beliefs.era.branches.filter(suspected)) {
    const faults = lists(branch);
    for (const [at, probability] of beliefs.sets(branch).probabilities.entries())
      if (probability > negligible) count(faults[at] ?? [], probability);
  }
  return chances;
}

/** How likely it is that something which can be heard is wrong on the way to a position. */
export function troubleAt(model: Model, beliefs: Beliefs, position: string): Probability {
  const audible = model.audible(position);
  return beliefs
    .ways(position)
    .reduce((sum, way) => sum + (audible(way.behaviour) ? way.probability : 0), 0);
}

/** How likely it is that something is wrong on the way to a position and nothing of it can be heard: alone, or since two faults cancel. */
export function unheardAt(model: Model, beliefs: Beliefs, position: string): Probability {
  const audible = model.audible(position);
  return beliefs
    .together(position)
    .reduce(
      (sum, { faults, behaviour, probability }) =>
        sum + (faults.length > 0 && !audible(behaviour) ? probability : 0),
      0,
    );
}
