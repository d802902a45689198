import { catalogue } from "#core/checks/catalogue.ts";
import { mostFaults } from "#core/diagnosis/branch.ts";
import { isUnlisted } from "#core/diagnosis/fault-sets.ts";
import type { Group } from "#core/diagnosis/groups.ts";
import type { Model } from "#core/diagnosis/model.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import type { Random } from "#core/units/random.ts";
import { drawnFrom } from "./person.ts";

/** The odds of a fault, in 10,000. */
export type Odds = (fault: RigFault) => number;

/** As the program assumes them. */
export const assumed: Odds = ({ weight }) => weight;

/** Off by a factor of three, up or down, drawn once for each name of a fault and place of it. */
export function offByThree(random: Random): Odds {
  const factors = new Map<string, number>();
  return ({ id, weight }) => {
    const factor = factors.get(id) ?? (random() < 0.5 ? 3 : 1 / 3);
    factors.set(id, factor);
    return Math.min(5000, weight * factor);
  };
}

/** Faults of the list that can be heard at a position, each alone. */
const heardAt = (model: Model, groups: readonly Group[], position: string): readonly RigFault[] => {
  const audible = model.audible(position);
  return groups
    .filter(({ inaudible, branch }) => !inaudible && branch.positions.includes(position))
    .flatMap(({ faults }) => faults)
    .filter((fault) => !isUnlisted(fault) && audible(model.under(position, [fault])));
};

/** One fault that is heard at a position, by its weight. */
export function single(
  model: Model,
  groups: readonly Group[],
  position: string,
  random: Random,
): readonly RigFault[] {
  const faults = heardAt(model, groups, position);
  const at = drawnFrom(
    Float64Array.from(faults, ({ weight }) => weight),
    random,
  );
  return faults.slice(at, at + 1);
}

const required = catalogue.filter((check) => check.required).flatMap(({ questions }) => questions);

/** What would be said to every required question; what only a hand on a cup tells apart sounds the same. */
const soundOf = (model: Model, position: string, way: number): string =>
  required
    .map((question) =>
      model
        .predict(
          question,
          position,
        )(way)
        .map((p) => Math.round(p * 1e6)),
    )
    .join();

/** Two of different groups, by their weights, of which neither hides the other, and that do not cancel. */
export function double(
  model: Model,
  groups: readonly Group[],
  position: string,
  random: Random,
): readonly RigFault[] {
  const sound = (faults: readonly RigFault[]) =>
    soundOf(model, position, model.under(position, faults));
  const groupOf = (fault: RigFault) => groups.find(({ faults }) => faults.includes(fault));
  for (let tries = 0; tries < 1000; tries++) {
    const [a, b] = [1, 2].flatMap(() => single(model, groups, position, random));
    if (a === undefined || b === undefined) break;
    if (groupOf(a) === groupOf(b) || (a.part === b.part && a.slot === b.slot)) continue;
    const others = [[a], [b], []].map(sound);
    if (!others.includes(sound([a, b]))) return [a, b];
  }
  throw new Error("no two faults are heard beside one another");
}

/** Whatever is wrong in a whole rig, by odds: each fault for itself, at most two on any way, and none beside what excludes it. */
export function anything(model: Model, random: Random, odds: Odds): readonly RigFault[] {
  const faults = model.branches.flatMap((branch) => branch.faults);
  for (let tries = 0; tries < 10_000; tries++) {
    const there = faults.filter((fault) => random() < odds(fault) / 10_000);
    if (may(model, there)) return there;
  }
  throw new Error("too much is wrong in this rig");
}

function may(model: Model, there: readonly RigFault[]): boolean {
  const some = new Set(there);
  const crowded = model.root.positions.some((position) => {
    const way = model.wayTo(position);
    return way.reduce((sum, { faults }) => sum + count(faults, some), 0) > mostFaults;
  });
  const slots = there.map(({ part, slot }) => `${part} ${slot}`);
  const alone = model.branches.every(
    ({ faults }) =>
      count(faults, some) < 2 || !faults.some((one) => isUnlisted(one) && some.has(one)),
  );
  return !crowded && alone && new Set(slots).size === slots.length;
}

const count = (faults: readonly RigFault[], some: ReadonlySet<RigFault>): number =>
  faults.reduce((sum, fault) => sum + Number(some.has(fault)), 0);
