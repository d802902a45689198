import type { Knot, State } from "#core/inference/knot.ts";
import type { Way } from "#core/inference/spread.ts";
import { believe } from "#core/inference/tree.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import { type Branch, mostFaults } from "./branch.ts";
import { type Era, eraAfter } from "./era.ts";
import type { Evidence } from "./evidence.ts";
import { type Likelihood, likelihoodAt } from "./likelihood.ts";
import type { Model } from "./model.ts";
import { remembered } from "./remembered.ts";
import { glimpses } from "./sights.ts";

/** The fault sets of one branch as they are now, and one probability for each. */
export interface BelievedSets {
  readonly faults: readonly (readonly RigFault[])[];
  readonly probabilities: Float64Array;
}

/** What is believed of a rig after all that was found; worked out as it is asked for, once. */
export interface Beliefs {
  readonly sets: (branch: Branch) => BelievedSets;
  /** What the whole way to a position may do now, with how likely; `above` is what the last branch hangs from. */
  readonly ways: (position: string) => readonly Way[];
}

/** The exact posterior of a rig. A pure function of the model and the evidence. */
export function beliefsOf(model: Model, evidence: Evidence): Beliefs {
  const era = eraAfter(model, evidence.moves);
  const knots = new Map<Branch, Knot>();
  const root = knotOf({ model, evidence, era, knots, likelihoods: new Map() }, model.root);
  const { histories, joined } = era;
  const belief = believe(root, histories.straight, histories.join, mostFaults, joined);
  const knot = (branch: Branch): Knot => {
    const found = knots.get(branch);
    if (found === undefined) throw new Error("this branch is of another rig");
    return found;
  };
  return {
    sets: remembered((branch: Branch) => ({
      faults: era.setsAt(branch, era.now),
      probabilities: belief.states(knot(branch)),
    })),
    ways: remembered((position: string) => {
      const last = model.wayTo(position).at(-1);
      return last === undefined ? [] : belief.ways(knot(last)).map(histories.now);
    }),
  };
}

/** What working out beliefs needs on its way down a rig. */
interface Work {
  readonly model: Model;
  readonly evidence: Evidence;
  readonly era: Era;
  readonly knots: Map<Branch, Knot>;
  /** Positions of one kind that heard the same share one. */
  readonly likelihoods: Map<string, Likelihood>;
}

function knotOf(work: Work, branch: Branch): Knot {
  const below = branch.below.map((one) => knotOf(work, one));
  const likelihood = likelihoodAt(work, branch);
  const [position] = branch.positions;
  const knot: Knot = {
    states: statesOf(work, branch),
    below,
    ...(branch.forks ? { towards: work.era.histories.towards } : {}),
    ...(likelihood === undefined ? {} : { likelihood }),
    ...(below.length === 0 && position !== undefined
      ? { standFor: work.era.standFor(position) }
      : {}),
  };
  work.knots.set(branch, knot);
  return knot;
}

/** The branch's sets weighed by what looks showed. */
function statesOf({ evidence, era }: Work, branch: Branch): readonly State[] {
  const looks = evidence.seen.filter(({ look }) => branch.looks.includes(look));
  const states = era.states(branch);
  if (looks.length === 0) return states;
  const chances = looks.map((one) => glimpses(one, era.setsAt(branch, one.epoch)));
  return states.map((state, at) => ({
    ...state,
    weight: chances.reduce((product, chance) => product * (chance[at] ?? 1), state.weight),
  }));
}
