import type { RigFault } from "#core/rig/rig-faults.ts";
import { type Bare, withBelow } from "./branch.ts";
import type { Op } from "./ways.ts";

/**
 * A way into a branch in one arrangement of the rig, after some moves: positions and epochs whose way down to here is the same share a
 * channel.
 */
export interface Channel {
  /** The channel of the branch above that it goes on from. */
  readonly up: number;
  /** The first epoch it stands for. */
  readonly epoch: number;
  /** The steps that are gone through in this branch. */
  readonly ops: readonly Op[];
}

/** The channels of each branch, and which one serves a position in an epoch. */
export interface Channels {
  readonly of: (branch: Bare) => readonly Channel[];
  readonly at: (branch: Bare, position: string, epoch: number) => number;
  /** The faults of a branch, and of those above it, that steps further down need. */
  readonly deeper: (branch: Bare) => ReadonlySet<RigFault>;
}

interface Layout {
  readonly root: Bare;
  readonly epochs: number;
  /** The steps to a position in an epoch. */
  readonly ways: (position: string, epoch: number) => readonly Op[];
  /** The epochs at which some fault of a branch was touched. */
  readonly touched: (branch: Bare) => readonly number[];
}

/** Lays channels through a tree. */
export function channelsOf({ root, epochs, ways, touched }: Layout): Channels {
  const laid = new Map<Bare, Laid>(withBelow(root).map((branch) => [branch, new Laid()]));
  const laidIn = (branch: Bare): Laid => {
    const found = laid.get(branch);
    if (found === undefined) throw new Error("this branch is of another tree");
    return found;
  };
  for (const path of pathsOf(root)) {
    const homes = homesOf(path);
    const [position = ""] = path.at(-1)?.positions ?? [];
    for (let epoch = 0; epoch < epochs; epoch++) {
      const placed = placedIn(path, homes, ways(position, epoch), laidIn);
      let up = 0;
      for (const [depth, branch] of path.entries()) {
        const moved = touched(branch).filter((one) => one <= epoch).length;
        up = laidIn(branch).enter(position, moved, { up, epoch, ops: placed[depth] ?? [] });
      }
    }
  }
  return {
    of: (branch) => laidIn(branch).channels,
    at: (branch, position, epoch) => laidIn(branch).at(position, epoch),
    deeper: (branch) => laidIn(branch).deeper,
  };
}

/** What is laid through one branch. */
class Laid {
  readonly channels: Channel[] = [];
  readonly deeper = new Set<RigFault>();
  readonly #keys = new Map<string, number>();
  readonly #rows = new Map<string, number[]>();

  /** The number of a channel, the one there is or a new one; `moved` counts the times something in the branch was touched. */
  enter(position: string, moved: number, channel: Channel): number {
    const key = `${channel.up} ${moved} ${channel.ops.map((op) => op.key)}`;
    const at = this.#keys.get(key) ?? this.channels.push(channel) - 1;
    this.#keys.set(key, at);
    const row = this.#rows.get(position) ?? [];
    row[channel.epoch] = at;
    this.#rows.set(position, row);
    return at;
  }

  at(position: string, epoch: number): number {
    return this.#rows.get(position)?.[epoch] ?? 0;
  }
}

/** Every path from the root to a branch with one position. */
const pathsOf = (branch: Bare): readonly (readonly Bare[])[] =>
  branch.below.length === 0
    ? [[branch]]
    : branch.below.flatMap((one) => pathsOf(one).map((path) => [branch, ...path]));

/** At which depth of a path each fault belongs. */
const homesOf = (path: readonly Bare[]): ReadonlyMap<RigFault, number> =>
  new Map(path.flatMap(({ faults }, depth) => faults.map((fault) => [fault, depth] as const)));

/** For each depth of a path, the steps gone through there: as soon as all is known that they and those before them need. */
function placedIn(
  path: readonly Bare[],
  homes: ReadonlyMap<RigFault, number>,
  ops: readonly Op[],
  laidIn: (branch: Bare) => Laid,
): readonly (readonly Op[])[] {
  const placed: Op[][] = path.map(() => []);
  let depth = 0;
  for (const op of ops) {
    for (const fault of op.faults.keys()) depth = Math.max(depth, homes.get(fault) ?? 0);
    placed[depth]?.push(op);
    for (const fault of op.faults.keys()) {
      const home = homes.get(fault) ?? depth;
      for (const branch of path.slice(home, depth)) laidIn(branch).deeper.add(fault);
    }
  }
  return placed;
}
