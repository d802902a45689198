import { type Look, looksAt } from "#core/checks/look.ts";
import type { State } from "#core/inference/knot.ts";
import type { BuiltRig } from "#core/rig/rig.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import type { Segment } from "#core/rig/segments.ts";
import { behaviourReader, faultSets, type Solved, unlisted } from "./fault-sets.ts";
import type { Pool } from "./pool.ts";

/** A segment with everything that can be wrong in it. */
export interface Branch {
  readonly positions: readonly string[];
  readonly faults: readonly RigFault[];
  /** The faults of each set that can be there: none, each alone, each two. */
  readonly faultsIn: readonly (readonly RigFault[])[];
  /** The sets in the same order, as the inference sees them before anything was found. */
  readonly states: readonly State[];
  /** What it does under some of its faults, as the pool's number. */
  readonly behaviour: (faults: readonly RigFault[]) => number;
  /** Several things hang on a circuit of it, and each gets something else. */
  readonly forks: boolean;
  readonly looks: readonly Look[];
  readonly below: readonly Branch[];
}

/** At most so many faults on the way to a position. */
export const mostFaults = 2;

/** What is kept from one segment to the next, since many are of one kind: circuits solved, and lists of states. */
export interface Kept {
  readonly solved: Solved;
  readonly states: Map<string, readonly State[]>;
}

/** Works out what each fault of a segment, and each two, do. */
export function branchOf(rig: BuiltRig, pool: Pool, kept: Kept, whole: Segment): Branch {
  const { solved } = kept;
  const segment = withEffect(pool, whole, solved);
  const faults = segment.steps.flatMap((step) => step.faults);
  const other = unlisted(segment);
  const sets = faultSets(faults, other, mostFaults);
  const behaviour = behaviourReader(pool, segment, solved);
  return {
    positions: segment.positions,
    faults: [...faults, other],
    faultsIn: sets.map((set) => set.faults),
    states: oneOfAKind(
      kept,
      sets.map((set) => ({
        faults: set.faults.length,
        weight: set.weight,
        behaviour: behaviour(set.faults),
      })),
    ),
    behaviour,
    forks: pool.isFork(behaviour([])),
    looks: looksAt(rig, faults),
    below: segment.below.map((one) => branchOf(rig, pool, kept, one)),
  };
}

/** Branches of one kind share their states, and with them all that is worked out from these. */
function oneOfAKind({ states }: Kept, made: readonly State[]): readonly State[] {
  const key = made.map(({ weight, behaviour }) => `${weight} ${behaviour}`).join();
  const known = states.get(key) ?? made;
  states.set(key, known);
  return known;
}

/** Leaves out the knobs that do nothing in this rig, as those of a socket nobody uses. */
function withEffect(pool: Pool, segment: Segment, solved: Solved): Segment {
  const behaviour = behaviourReader(pool, segment, solved);
  const healthy = behaviour([]);
  const acts = (fault: RigFault) => fault.at !== "settings" || behaviour([fault]) !== healthy;
  const steps = segment.steps.map((step) => {
    const faults = step.faults.filter(acts);
    return { ...step, faults, shape: `${step.shape} ${faults.map(({ name }) => name)}` };
  });
  return { ...segment, steps };
}

/** A branch and all that hang from it. */
export const withBelow = (branch: Branch): readonly Branch[] => [
  branch,
  ...branch.below.flatMap(withBelow),
];

/** What branches do one after the other, from the source to an end of the tree. */
export const along = (
  pool: Pool,
  way: readonly Branch[],
  behaviour: (branch: Branch) => number,
): number =>
  way.reduce((sum, branch, at) => {
    const next = way[at + 1];
    const joined = pool.join(sum, behaviour(branch));
    return next === undefined ? joined : pool.towards(joined, branch.below.indexOf(next));
  }, pool.straight);
