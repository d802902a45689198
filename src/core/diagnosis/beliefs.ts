import { complaint } from "#core/checks/complaint.ts";
import type { Knot, State } from "#core/inference/knot.ts";
import type { Way } from "#core/inference/spread.ts";
import { believe } from "#core/inference/tree.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import type { Probability } from "#core/units/units.ts";
import { type Branch, mostFaults } from "./branch.ts";
import type { Era } from "./era.ts";
import type { Evidence } from "./evidence.ts";
import { type Glimpsed, glimpses } from "./glimpses.ts";
import type { Grown } from "./grown.ts";
import { likelihoodAt } from "./likelihood.ts";
import type { Model } from "./model.ts";
import { remembered } from "./remembered.ts";

/** The fault sets of one branch as they are now, and one probability for each. */
export interface BelievedSets {
  readonly faults: readonly (readonly RigFault[])[];
  readonly probabilities: Float64Array;
}

/** What is believed of a rig after all that was found; worked out as it is asked for, once. */
export interface Beliefs {
  readonly era: Era;
  readonly sets: (branch: Branch) => BelievedSets;
  /** What the whole way to a position may do now, with how likely; `above` is what the last branch hangs from. */
  readonly ways: (position: string) => readonly WayNow[];
  /** What may be wrong on the way to a position now, all of it together, the likeliest first; what is very unlikely is left out. */
  readonly together: (position: string) => readonly Together[];
}

/** A way as it is now; `token` has it in every state it was in. */
export interface WayNow extends Way {
  readonly token: number;
}

/** All that is wrong on a way, and how likely that is. */
export interface Together {
  readonly faults: readonly RigFault[];
  /** What the way does under it now. */
  readonly behaviour: number;
  readonly probability: Probability;
}

/** What is less likely than this is left out. */
const least: Probability = 3e-4;

/** The exact posterior of a rig. A pure function of the model and the evidence. */
export function beliefsOf(model: Model, evidence: Evidence): Beliefs {
  const { tokens } = model;
  const { era } = evidence;
  const knots = new Map<Branch, Knot>();
  const root = knotOf({ model, evidence, knots }, era.root);
  const belief = believe(root, era.start, tokens.join, mostFaults, model.joined);
  const knot = (branch: Branch): Knot => {
    const found = knots.get(branch);
    if (found === undefined) throw new Error("this branch is of another rig");
    return found;
  };
  return {
    era,
    sets: remembered((branch: Branch) => {
      const grown = era.branches.find((one) => one === branch || one.source === branch) ?? era.root;
      const probabilities = belief.states(knot(branch));
      return { faults: grown.setsAt(era.course.now), probabilities };
    }),
    ways: remembered((position: string) => {
      const channel = era.channelAt(position, era.course.now);
      return belief.ways(knot(era.end(position))).map(({ above, behaviour, probability }) => ({
        above,
        behaviour: tokens.at(behaviour, channel),
        token: behaviour,
        probability,
      }));
    }),
    together: remembered((position: string) => {
      const channel = era.channelAt(position, era.course.now);
      const way = era.branches.filter((one) => one.positions.includes(position));
      const sets = way.map((one) => one.setsAt(era.course.now));
      return belief
        .paths(knot(era.end(position)), least)
        .map(({ states, behaviour, probability }) => ({
          faults: states.flatMap((at, depth) => sets[depth]?.[at] ?? []),
          behaviour: tokens.at(behaviour, channel),
          probability,
        }));
    }),
  };
}

/** What working out beliefs needs on its way down a rig. */
interface Work {
  readonly model: Model;
  readonly evidence: Evidence;
  /** The knot of each branch, by what it is now and by what it was drawn as. */
  readonly knots: Map<Branch, Knot>;
}

function knotOf(work: Work, branch: Grown): Knot {
  const below = branch.below.map((one) => knotOf(work, one));
  const [position] = branch.positions;
  const knot: Knot = {
    states: statesOf(branch, work.evidence.glimpsed),
    below,
    ...(branch.towards === undefined ? {} : { towards: branch.towards }),
    ...(below.length === 0 && position !== undefined ? endOf(work, position) : {}),
  };
  work.knots.set(branch, knot);
  work.knots.set(branch.source, knot);
  return knot;
}

/** What was found at the end of a way. What is measured tells apart what would be answered alike. */
function endOf({ model, evidence }: Work, end: string): Pick<Knot, "likelihood" | "standFor"> {
  const heard = evidence.heard.filter(({ position }) => position === end);
  const measured = evidence.measured.filter(({ position }) => position === end);
  const talked = heard.some(({ question }) => question === complaint);
  const likelihood = likelihoodAt(model, heard, measured);
  return {
    ...(likelihood === undefined ? {} : { likelihood }),
    ...(measured.length > 0 ? {} : { standFor: model.standIn(end, talked) }),
  };
}

/** The branch's sets weighed by what eyes and meters found of them. */
function statesOf(branch: Grown, glimpsed: readonly Glimpsed[]): readonly State[] {
  const own = glimpsed.filter((one) => one.branch === branch);
  if (own.length === 0) return branch.states;
  const chances = own.map((one) => glimpses(one, branch.setsAt(one.epoch)));
  return branch.states.map((state, at) => ({
    ...state,
    weight: chances.reduce((product, chance) => product * (chance[at] ?? 1), state.weight),
  }));
}
