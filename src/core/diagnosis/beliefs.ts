import type { Knot, State } from "#core/inference/knot.ts";
import type { Way } from "#core/inference/spread.ts";
import { believe } from "#core/inference/tree.ts";
import { survives } from "#core/rig/moves.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import { type Branch, mostFaults } from "./branch.ts";
import { dot, type Evidence, glimpses } from "./evidence.ts";
import { createHistories, type Histories } from "./histories.ts";
import type { Model } from "./model.ts";
import { remembered } from "./remembered.ts";

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
  const histories = createHistories(model.pool, evidence.moves.length + 1);
  const knots = new Map<Branch, Knot>();
  const work: Work = { model, evidence, histories, knots, likelihoods: new Map() };
  const root = knotOf(work, model.root);
  const joined = evidence.moves.length === 0 ? model.joined : undefined;
  const belief = believe(root, histories.straight, histories.join, mostFaults, joined);
  const knot = (branch: Branch): Knot => {
    const found = knots.get(branch);
    if (found === undefined) throw new Error("this branch is of another rig");
    return found;
  };
  return {
    sets: remembered((branch: Branch) => ({
      faults: nowIn(branch, evidence),
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
  readonly histories: Histories;
  readonly knots: Map<Branch, Knot>;
  /** Positions of one kind that heard the same share one. */
  readonly likelihoods: Map<string, Likelihood>;
}

function knotOf(work: Work, branch: Branch): Knot {
  const { model, evidence, histories, knots } = work;
  const below = branch.below.map((one) => knotOf(work, one));
  const likelihood = likelihoodAt(work, branch);
  const [position] = branch.positions;
  const end = below.length === 0 && evidence.moves.length === 0 && position !== undefined;
  const knot: Knot = {
    states: statesOf(evidence, histories, branch),
    below,
    ...(likelihood === undefined ? {} : { likelihood }),
    // Before the first move a history is a behaviour, and those that are answered alike are one.
    ...(end ? { standFor: model.standFor(position) } : {}),
  };
  knots.set(branch, knot);
  return knot;
}

/** The branch's sets weighed by what looks showed, with their behaviour over time. */
function statesOf(evidence: Evidence, histories: Histories, branch: Branch): readonly State[] {
  const looks = evidence.seen.filter(({ look }) => branch.looks.includes(look));
  if (looks.length === 0 && evidence.moves.length === 0) return branch.states;
  const chances = looks.map((one) => glimpses(one, setsAt(branch, evidence, one.epoch)));
  const later = evidence.moves.map((_, before) => setsAt(branch, evidence, before + 1));
  return branch.states.map(
    ({ faults, weight, behaviour }, at): State => ({
      faults,
      weight: chances.reduce((product, chance) => product * (chance[at] ?? 1), weight),
      behaviour: histories.of((epoch) =>
        epoch === 0 ? behaviour : branch.behaviour(later[epoch - 1]?.[at] ?? []),
      ),
    }),
  );
}

/** The branch's fault sets after the moves of all epochs before one. */
const setsAt = (branch: Branch, evidence: Evidence, epoch: number) =>
  epoch === 0 ? branch.faultsIn : branch.faultsIn.map((faults) => left(faults, evidence, epoch));

const nowIn = (branch: Branch, evidence: Evidence) =>
  setsAt(branch, evidence, evidence.moves.length);

/** Which of the faults are left after the moves of all epochs before one. */
const left = (
  faults: readonly RigFault[],
  { moves }: Evidence,
  epoch: number,
): readonly RigFault[] =>
  faults.length === 0
    ? faults
    : faults.filter((fault) => moves.slice(0, epoch).every((move) => survives(fault, move)));

type Likelihood = (history: number) => number;

/** The likelihood of everything heard at the end of a branch, remembered by behaviour; none where nothing was heard. */
function likelihoodAt(
  { model, evidence, histories, likelihoods }: Work,
  branch: Branch,
): Likelihood | undefined {
  const [position] = branch.positions;
  const heard = evidence.heard.filter((one) => one.position === position);
  if (heard.length === 0 || position === undefined || branch.below.length > 0) return undefined;
  const readers = heard.map((one) => ({ ...one, predict: model.predict(one.question, position) }));
  const key = [
    model.healthy(position),
    ...heard.map(({ question, epoch, weights }) => `${question.name} ${epoch} ${weights}`),
  ].join();
  const known = likelihoods.get(key);
  const made =
    known ??
    remembered((history: number) => {
      let product = 1;
      for (const { predict, epoch, weights } of readers)
        product *= dot(predict(histories.at(history, epoch)), weights);
      return product;
    });
  likelihoods.set(key, made);
  return made;
}
