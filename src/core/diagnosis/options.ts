import { catalogue } from "#core/checks/catalogue.ts";
import type { EarCheck } from "#core/checks/check.ts";
import type { Asked, Measured } from "#core/checks/finding.ts";
import { type Look, predictLook } from "#core/checks/look.ts";
import { given, lookSlip } from "#core/checks/slips.ts";
import { expected, information, type Prospect } from "#core/inference/information.ts";
import type { Way } from "#core/inference/spread.ts";
import { instrumentAt } from "#core/rig/rig.ts";
import type { Seconds } from "#core/units/units.ts";
import { answersTo, neighbour, walk } from "./asking.ts";
import type { Beliefs, BelievedSets } from "./beliefs.ts";
import type { Branch } from "./branch.ts";
import type { Evidence } from "./evidence.ts";
import type { Model } from "./model.ts";
import { showing } from "./sights.ts";

/** Something that could be asked next, of somebody or of an instrument: what it is expected to tell, and what it costs. */
export interface Option {
  readonly asked: Asked | Measured["asked"];
  readonly bits: number;
  readonly seconds: Seconds;
}

/** Less likely than this and it steers no choice. */
const negligible = 1e-5;

/**
 * Everything on offer from a position: its checks, looks at what leads to it, and one other position's checks; of an instrument its own
 * measurement.
 */
export function optionsAt(
  model: Model,
  evidence: Evidence,
  beliefs: Beliefs,
  position: string,
): readonly Option[] {
  if (instrumentAt(model.rig, position) !== undefined) return [measuring(position)];
  const here = catalogue.map((check) => ({
    asked: { check: check.name, position },
    bits: information(atPosition(model, evidence, likely(beliefs, position), position, check)),
    seconds: check.seconds,
  }));
  const looks = model.wayTo(position).flatMap((branch) =>
    branch.looks
      .filter(({ place }) => !evidence.seen.has(place))
      .map((look) => ({
        asked: { check: "look", place: look.place } as const,
        bits: information(glances(look, setsFor(beliefs, branch))),
        seconds: look.seconds,
      })),
  );
  return [...here, ...looks, ...elsewhere(model, evidence, beliefs, position)];
}

/** A measurement of some seconds, and a hand on two plugs (common practice, no source). It tells all that it can at once. */
const measuring = (position: string): Option => ({
  asked: { check: "matrix", position },
  bits: 1,
  seconds: 10,
});

/** The sets of the branch that holds a branch's faults now. */
function setsFor(beliefs: Beliefs, { faults: [first] }: Branch): BelievedSets {
  const branch = beliefs.era.branches.find(({ faults }) => first && faults.includes(first));
  return branch ? beliefs.sets(branch) : { faults: [], probabilities: new Float64Array() };
}

const likely = (beliefs: Beliefs, position: string): readonly Way[] =>
  beliefs.ways(position).filter(({ probability }) => probability > negligible);

/** What each way there may be would be answered, given what has been answered already. */
function atPosition(
  model: Model,
  evidence: Evidence,
  ways: readonly Way[],
  position: string,
  check: EarCheck,
): readonly Prospect[] {
  const merged = new Map<number, { probability: number; answers: Float64Array }>();
  for (const { behaviour, probability } of ways) {
    const known = merged.get(behaviour);
    if (known !== undefined) known.probability += probability;
    else
      merged.set(behaviour, {
        probability,
        answers: answersTo(model, evidence, behaviour, position, check),
      });
  }
  return [...merged.values()];
}

/** What each case of what may be seen would be answered. */
function glances(look: Look, { faults, probabilities }: BelievedSets): readonly Prospect[] {
  const { which, shown } = showing(look, faults);
  const chances = new Float64Array(shown.length);
  for (let at = 0; at < which.length; at++)
    chances[which[at] as number] = (chances[which[at] as number] ?? 0) + (probabilities[at] ?? 0);
  return shown.flatMap((there, at) => {
    const probability = chances[at] ?? 0;
    if (probability < negligible) return [];
    return [{ probability, answers: given(predictLook(look, there), lookSlip) }];
  });
}

/**
 * The checks of the next position that hangs from the same branch. They count for what they tell of what both share, not for
 * what they tell of that position alone: its turn comes.
 */
function elsewhere(
  model: Model,
  evidence: Evidence,
  beliefs: Beliefs,
  position: string,
): readonly Option[] {
  const other = neighbour(model, evidence, position);
  if (other === undefined) return [];
  const ways = likely(beliefs, other);
  return catalogue
    .filter(({ required }) => required)
    .map((check) => {
      const byTrunk = new Map<number, Prospect[]>();
      for (const way of ways) {
        const prospect = {
          probability: way.probability,
          answers: answersTo(model, evidence, way.behaviour, other, check),
        };
        byTrunk.set(way.above, [...(byTrunk.get(way.above) ?? []), prospect]);
      }
      const prospects = [...byTrunk.values()].map(
        (one): Prospect => ({
          probability: one.reduce((sum, { probability }) => sum + probability, 0),
          answers: expected(one),
        }),
      );
      return {
        asked: { check: check.name, position: other },
        bits: information(prospects),
        seconds: check.seconds + walk,
      };
    });
}
