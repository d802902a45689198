import type { RigFault } from "#core/rig/rig-faults.ts";
import type { Probability } from "#core/units/units.ts";
import type { Beliefs } from "./beliefs.ts";
import type { Group } from "./groups.ts";
import type { Model } from "./model.ts";

/** A group with how likely it is that one of its faults is there now. */
export interface Suspect {
  readonly group: Group;
  readonly probability: Probability;
}

/** Every group, the likeliest first. What cannot be heard is left out: it is never named as a verdict. */
export function suspectsOf(groups: readonly Group[], beliefs: Beliefs): readonly Suspect[] {
  const audible = groups.filter(({ inaudible }) => !inaudible);
  const home = new Map(audible.flatMap((group) => group.faults.map((fault) => [fault, group])));
  const chances = new Map<Group, Probability>();
  const count = (faults: readonly RigFault[], probability: Probability): void => {
    for (const group of new Set(faults.map((fault) => home.get(fault))))
      if (group !== undefined) chances.set(group, (chances.get(group) ?? 0) + probability);
  };
  for (const branch of new Set(audible.map((group) => group.branch))) {
    const { faults, probabilities } = beliefs.sets(branch);
    for (const [at, probability] of probabilities.entries())
      if (probability > 0) count(faults[at] ?? [], probability);
  }
  return audible
    .map((group): Suspect => ({ group, probability: chances.get(group) ?? 0 }))
    .sort((a, b) => b.probability - a.probability);
}

/** How likely it is that something which can be heard is wrong on the way to a position. */
export function troubleAt(model: Model, beliefs: Beliefs, position: string): Probability {
  const audible = model.audible(position);
  return beliefs
    .ways(position)
    .reduce((sum, way) => sum + (audible(way.behaviour) ? way.probability : 0), 0);
}
