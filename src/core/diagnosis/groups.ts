import type { RigFault } from "#core/rig/rig-faults.ts";
import { differs } from "./answers.ts";
import type { Branch } from "./branch.ts";
import { isUnlisted } from "./fault-sets.ts";
import type { Model } from "./model.ts";

/** Faults that no check on offer in this rig would answer differently. */
export interface Group {
  readonly faults: readonly RigFault[];
  readonly branch: Branch;
  /** Answers exactly as a healthy chain does, to every check by ear: it is never named as a verdict. */
  readonly inaudible: boolean;
}

/** Positions of a branch that may differ from one another; those with equal ways below count once. */
function kinds(model: Model, branch: Branch): readonly string[] {
  const first = new Map<number, string>();
  for (const position of branch.positions) {
    const way = model.healthy(position);
    if (!first.has(way)) first.set(way, position);
  }
  return [...first.values()];
}

/** What the whole way to a position does under faults of one branch alone. */
export const wayUnder = (
  { wayTo, pool }: Model,
  position: string,
  branch: Branch,
  faults: readonly RigFault[],
): number =>
  wayTo(position).reduce(
    (sum, one) => pool.join(sum, one.behaviour(one === branch ? faults : [])),
    pool.straight,
  );

/** Every fault of a rig in its group, worked out from the rig alone. */
export const groupsOf = (model: Model): readonly Group[] =>
  model.branches.flatMap((branch) => groupsIn(model, branch));

function groupsIn(model: Model, branch: Branch): readonly Group[] {
  const at = kinds(model, branch);
  const ways = new Map(
    branch.faults.map((fault) => [fault, at.map((one) => wayUnder(model, one, branch, [fault]))]),
  );
  const alike = (a: readonly number[], b: readonly number[]) =>
    at.every((position, index) => !differs(model.predict, position, a[index] ?? 0, b[index] ?? 0));
  const healthy = at.map(model.healthy);
  const groups: { faults: RigFault[]; inaudible: boolean }[] = [];
  for (const fault of branch.faults) {
    const way = ways.get(fault) ?? [];
    const silent = !isUnlisted(fault) && alike(way, healthy);
    const home = groups.find(({ faults, inaudible }) =>
      silent
        ? inaudible
        : !inaudible &&
          faults.every(
            (one) =>
              !one.seen &&
              !fault.seen &&
              isUnlisted(one) === isUnlisted(fault) &&
              alike(ways.get(one) ?? [], way),
          ),
    );
    if (home === undefined) groups.push({ faults: [fault], inaudible: silent });
    else home.faults.push(fault);
  }
  return groups.map((group) => ({ ...group, branch }));
}
