import type { State } from "#core/inference/knot.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import type { Branch } from "./branch.ts";
import type { Channel, Channels } from "./channels.ts";
import { type Life, thereAt } from "./course.ts";
import type { Model } from "./model.ts";
import { remembered } from "./remembered.ts";
import { settledOf } from "./settled.ts";

type FaultLists = readonly (readonly RigFault[])[];

/** A branch over a course of moves: every set of faults it may have had, and what each did. */
export interface Grown extends Branch {
  readonly below: readonly Grown[];
  readonly states: readonly State[];
  /** The faults of each state as they were in an epoch. */
  readonly setsAt: (epoch: number) => FaultLists;
  /** What a way that was passed down to it hands to one of the branches below; left out where all get the same. */
  readonly towards?: (whole: number, child: number) => number;
  readonly channels: readonly Channel[];
  /** The branch as it was before it was looked at over time. */
  readonly source: Branch;
}

interface Growing {
  readonly model: Model;
  readonly channels: Channels;
  /** Every life there may be of the faults of a branch. */
  readonly lives: (branch: Branch) => readonly Life[];
}

/** A branch, and those below it, over a course of moves. */
export function grow(growing: Growing, branch: Branch): Grown {
  const { model, channels, lives } = growing;
  const below = branch.below.map((one) => grow(growing, one));
  const own = channels.of(branch);
  const deeper = channels.deeper(branch);
  const { sets, states } = settledOf(model, { branch, own, lives: lives(branch), deeper });
  const ups = below.map((one) => one.channels.map(({ up }) => up));
  const needed = below.map((one) => neededBy(one, channels));
  const plain = own.length === 1 && deeper.size === 0;
  const projected = ups.map((channelUps, child) =>
    plain && channelUps.length === 1
      ? (whole: number) => whole
      : remembered((whole: number) =>
          model.tokens.project(whole, channelUps, needed[child] ?? new Set()),
        ),
  );
  return {
    ...branch,
    source: branch,
    below,
    channels: own,
    states,
    setsAt: remembered((epoch: number) => sets().map((set) => thereAt(set.lives, epoch))),
    ...(plain && ups.every(({ length }) => length === 1)
      ? {}
      : { towards: (whole: number, child: number) => projected[child]?.(whole) ?? whole }),
  };
}

/** Every fault that a branch's own steps read, or those below it. */
function neededBy(branch: Grown, channels: Channels): ReadonlySet<RigFault> {
  return new Set([
    ...branch.channels.flatMap(({ ops }) => ops.flatMap((op) => [...op.faults.keys()])),
    ...channels.deeper(branch.source),
  ]);
}
