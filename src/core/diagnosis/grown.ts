import type { State } from "#core/inference/knot.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import { type Branch, mostFaults } from "./branch.ts";
import type { Channel, Channels } from "./channels.ts";
import { isThere, type Life, thereAt } from "./course.ts";
import { type FaultSet, faultSets, isUnlisted } from "./fault-sets.ts";
import type { Model } from "./model.ts";
import { remembered } from "./remembered.ts";
import type { AcrossBranch } from "./tokens.ts";
import type { Op } from "./ways.ts";

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

/** What is kept of a branch under some moves. */
export interface Settled {
  readonly sets: readonly FaultSet[];
  readonly states: readonly State[];
}

/** A branch, and those below it, over a course of moves. */
export function grow(growing: Growing, branch: Branch): Grown {
  const { model, channels, lives } = growing;
  const below = branch.below.map((one) => grow(growing, one));
  const own = channels.of(branch);
  const { sets, states } = settledOf(growing, branch, own, lives(branch));
  const ups = below.map((one) => one.channels.map(({ up }) => up));
  const needed = below.map((one) => neededBy(one, channels));
  const plain = own.length === 1 && channels.deeper(branch).size === 0;
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
    setsAt: remembered((epoch: number) => sets.map((set) => thereAt(set.lives, epoch))),
    ...(plain && ups.every(({ length }) => length === 1)
      ? {}
      : { towards: (whole: number, child: number) => projected[child]?.(whole) ?? whole }),
  };
}

/** Every fault that a branch's own steps read, or those below it. */
function neededBy(branch: Grown, channels: Channels): ReadonlySet<RigFault> {
  return new Set([
    ...branch.channels.flatMap(({ ops }) => ops.flatMap((op) => [...op.faults])),
    ...channels.deeper(branch.source),
  ]);
}

/** Branches of one kind share their states, and with them all that is worked out from these. */
function settledOf(
  { model, channels }: Growing,
  branch: Branch,
  own: readonly Channel[],
  lives: readonly Life[],
): Settled {
  const { kinds } = model;
  const there = (epoch: number) => lives.map((life) => (isThere(life, epoch) ? 1 : 0)).join("");
  const key = [
    branch.positions.join(),
    ...own.map(({ ops, epoch, up }) => `${up} ${ops.map((op) => op.key)} ${there(epoch)}`),
    lives.map(({ from, until }) => `${from}-${until}`).join(),
  ].join("|");
  const known = kinds.get(key);
  if (known !== undefined) return known;
  const sets = faultSets(lives, mostFaults);
  const token = tokenReader(model, branch, own, channels.deeper(branch));
  const made = sets.map(({ lives: some, weight }) => ({
    faults: some.length,
    weight,
    behaviour: token(some),
  }));
  const content = `states ${made.map(({ weight, behaviour }) => `${weight} ${behaviour}`).join()}`;
  const kind = kinds.get(content) ?? { sets, states: made };
  kinds.set(content, kind);
  const settled = { sets, states: kind.states };
  kinds.set(key, settled);
  return settled;
}

/** What a set of lives does in a branch, as a token. */
function tokenReader(
  { pool, tokens }: Model,
  branch: Branch,
  own: readonly Channel[],
  deeper: ReadonlySet<RigFault>,
): (lives: readonly Life[]) => number {
  const unlisted = (lives: readonly Life[]) => lives.some(({ fault }) => isUnlisted(fault));
  if (reachesAcross(branch, own, deeper)) {
    const steps = own.map(({ ops, epoch, up }) => `${up} ${epoch} ${ops.map((op) => op.key)}`);
    const name = `${branch.positions} ${steps}`;
    const reaching: AcrossBranch = { name, channels: own, deeper, unlisted };
    return (lives) => tokens.across(reaching, lives);
  }
  const through = ({ ops, epoch }: Channel, lives: readonly Life[]): number => {
    const there = thereAt(lives, epoch);
    const read = (op: Op): number =>
      there.some((fault) => op.faults.has(fault)) ? op.read(there) : op.healthy;
    const number = ops.reduce((sum, op) => pool.join(sum, read(op)), pool.straight);
    return unlisted(lives) ? pool.unlisted(number) : number;
  };
  return (lives) => tokens.vector(own.map((channel) => through(channel, lives)));
}

/** Whether a circuit has faults of this branch and of another. */
function reachesAcross(
  { faults }: Branch,
  channels: readonly Channel[],
  deeper: ReadonlySet<RigFault>,
): boolean {
  const mine = new Set(faults);
  const foreign = ({ faults: all }: Op) => [...all].some((fault) => !mine.has(fault));
  return faults.some((fault) => deeper.has(fault)) || channels.some(({ ops }) => ops.some(foreign));
}
