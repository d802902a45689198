import type { Move } from "#core/rig/moves.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import { type Bare, treeOf, withBelow } from "./branch.ts";
import { channelsOf } from "./channels.ts";
import { type Course, courseOf, type Life, livesOf } from "./course.ts";
import { isUnlisted } from "./fault-sets.ts";
import { type Grown, grow } from "./grown.ts";
import type { Model } from "./model.ts";
import { createRecent, type Recent } from "./recent.ts";
import { remembered } from "./remembered.ts";

/** A rig as a list of moves has left it, epoch by epoch. Kept from one answer to the next. */
export interface Era {
  readonly course: Course;
  readonly root: Grown;
  readonly branches: readonly Grown[];
  /** The branch that a position alone has. */
  readonly end: (position: string) => Grown;
  /** Which state of a position's way an epoch belongs to: a new one wherever a hand changed something on it. */
  readonly channelAt: (position: string, epoch: number) => number;
  /** A way that has nothing in it yet. */
  readonly start: number;
  /** The faults that are on the way to a position now, were they there. */
  readonly onTheWay: (position: string) => ReadonlySet<RigFault>;
}

const eras = new WeakMap<Model, Recent<Era>>();

/** The era after some moves, made once for each list of them. */
export function eraAfter(model: Model, moves: readonly Move[]): Era {
  const known = eras.get(model) ?? createRecent<Era>(kept);
  eras.set(model, known);
  return known.of(JSON.stringify(moves), () => eraOf(model, moves));
}

/** So many lists of moves are kept: a session goes on from the last, and takes the last back. */
const kept = 12;

function eraOf(model: Model, moves: readonly Move[]): Era {
  const { pool, tokens } = model;
  const positions = model.root.positions;
  const course = courseOf(model.drawn, moves, model.faultsIn);
  const arrangements = course.rigs.map(model.waysOf);
  const waysAt = (epoch: number) => arrangements[epoch] ?? model.ways;
  const asDrawn = arrangements.every((ways) => ways === model.ways);
  const tree = asDrawn ? model.root : model.branchOf(treeOf(positions, [...new Set(arrangements)]));
  const lives = remembered((branch: Bare) =>
    branch.faults.flatMap((fault) => livesOf(fault, course)),
  );
  const channels = channelsOf({
    root: tree,
    epochs: moves.length + 1,
    ways: (position, epoch) => waysAt(epoch).to(position),
    touched: remembered((branch) => boundaries(lives(branch))),
  });
  const root = grow({ model, channels, lives }, tree);
  const branches = withBelow(root);
  const end = endsOf(branches);
  return {
    course,
    root,
    branches,
    end,
    channelAt: (position, epoch) => channels.at(end(position).source, position, epoch),
    start: tokens.vector(root.channels.map(() => pool.straight)),
    onTheWay: remembered((position: string) => {
      const steps = waysAt(course.now).to(position);
      const way = branches.filter((one) => one.positions.includes(position));
      const others = way.flatMap(({ faults }) => faults.filter(isUnlisted));
      return new Set([...steps.flatMap((op) => [...op.faults.keys()]), ...others]);
    }),
  };
}

/** Finds the branch that a position alone has. Throws on a position the rig lacks. */
function endsOf(branches: readonly Grown[]): (position: string) => Grown {
  const ends = new Map(
    branches.flatMap((one) => (one.below.length === 0 ? [[one.positions[0], one] as const] : [])),
  );
  return (position) => {
    const found = ends.get(position);
    if (found === undefined) throw new Error(`the rig has no position named ${position}`);
    return found;
  };
}

/** The epochs at which something about some lives changes. */
const boundaries = (lives: readonly Life[]): readonly number[] => [
  ...new Set(
    lives.flatMap(({ from, until }) => [from, until]).filter((at) => at > 0 && at < Infinity),
  ),
];
