import { build, type Rig } from "./rig.ts";
import { type RigFault, rigFaults } from "./rig-faults.ts";
import { type Step, stepsTo } from "./steps.ts";

/** A step, and the faults that are its own. */
export interface OwnStep extends Step {
  readonly faults: readonly RigFault[];
}

/** A stretch of the tree: steps that serve the same positions, and what branches off behind them. */
export interface Segment {
  readonly positions: readonly string[];
  readonly steps: readonly OwnStep[];
  readonly below: readonly Segment[];
}

/** The rig as a tree: what all positions share is its root, at any depth below it what some share. */
export function segmentsOf(drawn: Rig): Segment {
  const rig = build(drawn);
  const faults = rigFaults(rig);
  const serves = new Map<string, { step: OwnStep; positions: string[] }>();
  for (const { id } of rig.positions)
    for (const step of stepsTo(rig, id)) {
      const known = serves.get(step.id);
      if (known !== undefined) known.positions.push(id);
      else
        serves.set(step.id, {
          step: { ...step, faults: faults.filter(step.owns) },
          positions: [id],
        });
    }
  return tree(
    rig.positions.map(({ id }) => id),
    [...serves.values()],
  );
}

type Served = { readonly step: OwnStep; readonly positions: readonly string[] };

/** The segment of these positions, and those below it. */
function tree(positions: readonly string[], served: readonly Served[]): Segment {
  const own = served.filter((one) => one.positions.length === positions.length);
  const rest = served.filter((one) => one.positions.length < positions.length);
  const below: Segment[] = [];
  let left = positions;
  while (rest.length > 0 && left.length > 0) {
    const [first = ""] = left;
    const widest = rest
      .filter((one) => one.positions.includes(first))
      .reduce<readonly string[]>(
        (wide, one) => (one.positions.length > wide.length ? one.positions : wide),
        [],
      );
    below.push(
      tree(
        widest,
        rest.filter((one) => widest.includes(one.positions[0] ?? "")),
      ),
    );
    left = left.filter((id) => !widest.includes(id));
  }
  return { positions, steps: own.map(({ step }) => step), below };
}
