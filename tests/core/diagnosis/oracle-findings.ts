import { type Answered, type Happening, isAnswered } from "#core/checks/finding.ts";
import { predictLook, sightsOf } from "#core/checks/look.ts";
import { lookSlip, meant, slip } from "#core/checks/slips.ts";
import { questionsOf } from "#core/diagnosis/evidence.ts";
import { isUnlisted } from "#core/diagnosis/fault-sets.ts";
import type { Model } from "#core/diagnosis/model.ts";
import { behaviourAt } from "#core/rig/ear-matrix.ts";
import type { BuiltRig } from "#core/rig/rig.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import { stepsTo } from "#core/rig/steps.ts";

/** Whether a fault is ever on the way to a position, in any of some arrangements. */
export const everOnTheWay = (
  model: Model,
  rigs: readonly BuiltRig[],
  position: string,
  fault: RigFault,
): boolean =>
  isUnlisted(fault)
    ? model.branches.some(
        (branch) => branch.faults.includes(fault) && branch.positions.includes(position),
      )
    : rigs.some((rig) => stepsTo(rig, position).some((step) => step.owns(fault)));

/** The chance of all findings in a world. One judgement a question for as long as nothing on the way is touched: tests ask nothing twice. */
export function likelihoods(
  model: Model,
  rigs: readonly BuiltRig[],
  happenings: readonly Happening[],
): (there: readonly (readonly RigFault[])[]) => number {
  const known = new Map<string, number>();
  const readers = happenings.map((one, at) => {
    const epoch = happenings.slice(0, at).filter(({ kind }) => kind === "move").length;
    return { one, at, epoch };
  });
  return (there) => {
    let product = 1;
    for (const { one, at, epoch } of readers) {
      if (one.kind !== "finding" || !isAnswered(one.finding)) continue;
      const faults = there[epoch] ?? [];
      const key = `${at} ${faults.map(({ id }) => id)}`;
      const found =
        known.get(key) ?? chanceOf(model, rigs[epoch] ?? model.rig, faults, one.finding);
      known.set(key, found);
      product *= found;
    }
    return product;
  };
}

function chanceOf(
  model: Model,
  rig: BuiltRig,
  faults: readonly RigFault[],
  { asked, results }: Answered,
): number {
  if (asked.check === "look") {
    const look = model.looks.find(({ place }) => place === asked.place);
    if (look === undefined) return 1;
    const weights = meant(look.answers, results[0] ?? look.answers, lookSlip);
    const chances = predictLook(look, sightsOf(look, faults));
    return chances.reduce((sum, p, at) => sum + p * (weights[at] ?? 0), 0);
  }
  if (!("position" in asked)) throw new Error(`nothing is known of ${asked.check} here`);
  const { position } = asked;
  const loose = faults.filter(
    (fault) => fault.comesAndGoes && stepsTo(rig, position).some((step) => step.owns(fault)),
  );
  const cases = subsets(loose).map((away) => faults.filter((fault) => !away.includes(fault)));
  const mean = cases.map((shown) =>
    questionsOf(asked).reduce((product, question, at) => {
      const weights = meant(question.answers, results[at] ?? question.answers, slip);
      const chances = said(model, rig, position, shown, question);
      return product * chances.reduce((sum, p, index) => sum + p * (weights[index] ?? 0), 0);
    }, 1),
  );
  return mean.reduce((sum, one) => sum + one, 0) / mean.length;
}

function subsets<One>([first, ...rest]: readonly One[]): readonly (readonly One[])[] {
  if (first === undefined) return [[]];
  return subsets(rest).flatMap((some) => [some, [first, ...some]]);
}

function said(
  model: Model,
  rig: BuiltRig,
  position: string,
  faults: readonly RigFault[],
  question: ReturnType<typeof questionsOf>[number],
): Float64Array {
  const unlisted = faults.some(
    (fault) => isUnlisted(fault) && everOnTheWay(model, [rig], position, fault),
  );
  if (unlisted) {
    const way = model.pool.unlisted(model.healthy(position));
    return model.predict(question, position)(way);
  }
  const healthy = behaviourAt(model.rig, position, []);
  return question.predict(
    behaviourAt(
      rig,
      position,
      faults.filter((fault) => !isUnlisted(fault)),
    ),
    healthy,
  );
}
