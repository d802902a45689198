import { sightOf } from "#core/checks/look.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import type { Branch } from "./branch.ts";
import { isUnlisted } from "./fault-sets.ts";
import type { Model } from "./model.ts";

/** Faults that no check on offer in this rig would answer differently, the likeliest beforehand first. */
export interface Group {
  readonly faults: readonly RigFault[];
  readonly branch: Branch;
  /** Answers exactly as a healthy chain does, to every check by ear or to the instrument: it is never named as a verdict. */
  readonly inaudible: boolean;
}

/** Positions of a branch that may differ from one another: those that a fault of it reaches alike count once. */
function kinds(model: Model, branch: Branch): readonly string[] {
  const first = new Map<string, string>();
  for (const position of branch.positions) {
    const steps = model.ways
      .to(position)
      .filter((op) => branch.faults.some((f) => op.faults.has(f)));
    const key = `${model.healthy(position)} ${steps.map(({ key: step }) => step)}`;
    if (!first.has(key)) first.set(key, position);
  }
  return [...first.values()];
}

/** Every fault of a rig in its group, worked out from the rig alone. */
export const groupsOf = (model: Model): readonly Group[] =>
  model.branches.flatMap((branch) => groupsIn(model, branch));

function groupsIn(model: Model, branch: Branch): readonly Group[] {
  const at = kinds(model, branch);
  const ways = new Map(
    branch.faults.map((fault) => [fault, at.map((one) => model.under(one, [fault]))]),
  );
  const wayOf = (fault: RigFault) => ways.get(fault) ?? [];
  const alike = (a: readonly number[], b: readonly number[]) =>
    at.every((position, index) => !model.differ(position)(a[index] ?? 0, b[index] ?? 0));
  const healthy = at.map(model.healthy);
  const inaudible = (fault: RigFault) => !isUnlisted(fault) && alike(wayOf(fault), healthy);
  const groups: RigFault[][] = [];
  for (const fault of branch.faults.filter((one) => !inaudible(one))) {
    const home = groups.find((faults) =>
      faults.every((one) => looksLike(one, fault) && alike(wayOf(one), wayOf(fault))),
    );
    if (home === undefined) groups.push([fault]);
    else home.push(fault);
  }
  const silent = branch.faults.filter(inaudible);
  return [
    ...groups.map((faults) => ({ faults: byOdds(faults), branch, inaudible: false })),
    ...(silent.length > 0 ? [{ faults: silent, branch, inaudible: true }] : []),
  ];
}

/** Nothing found tells them apart, so their odds beforehand order them. */
const byOdds = (faults: readonly RigFault[]): readonly RigFault[] =>
  [...faults].sort((a, b) => b.weight - a.weight);

/** Neither shows anything to the eye, or both the same. What is not on the list is like nothing else. */
function looksLike(a: RigFault, b: RigFault): boolean {
  const sight = (fault: RigFault) => (fault.seen ? sightOf(fault) : undefined);
  return sight(a) === sight(b) && isUnlisted(a) === isUnlisted(b);
}
