import type { Look } from "#core/checks/look.ts";
import { type BuiltRig, build, type Rig } from "#core/rig/rig.ts";
import { segmentsOf } from "#core/rig/segments.ts";
import { type Answers, answersFor } from "./answers.ts";
import { along, type Branch, branchOf, withBelow } from "./branch.ts";
import { createPool, type Pool } from "./pool.ts";

/** All that can be said of a rig before anything was found: made once, when the rig is drawn. */
export interface Model extends Answers {
  readonly rig: BuiltRig;
  readonly pool: Pool;
  readonly root: Branch;
  readonly branches: readonly Branch[];
  /** The branches on the way to a position, from the source. Throws on a position the rig lacks. */
  readonly wayTo: (position: string) => readonly Branch[];
  /** What the way to a position does with nothing wrong. */
  readonly healthy: (position: string) => number;
  readonly looks: readonly Look[];
}

/** Works out what every fault of a rig, and every two together, would be answered. Takes a fraction of a second. */
export function modelOf(drawn: Rig): Model {
  const rig = build(drawn);
  const pool = createPool();
  const root = branchOf(rig, pool, { solved: new Map(), states: new Map() }, segmentsOf(drawn));
  const branches = withBelow(root);
  const ways = new Map(
    rig.positions.map(({ id }) => [id, branches.filter((one) => one.positions.includes(id))]),
  );
  const wayTo = (position: string): readonly Branch[] => {
    const way = ways.get(position);
    if (way === undefined) throw new Error(`the rig has no position named ${position}`);
    return way;
  };
  const normal = new Map(
    rig.positions.map(({ id }) => [id, along(pool, wayTo(id), (branch) => branch.behaviour([]))]),
  );
  const healthy = (position: string): number => {
    const way = normal.get(position);
    if (way === undefined) throw new Error(`the rig has no position named ${position}`);
    return way;
  };
  return {
    ...answersFor(pool, healthy),
    rig,
    pool,
    root,
    branches,
    wayTo,
    healthy,
    looks: branches.flatMap((branch) => branch.looks),
  };
}
