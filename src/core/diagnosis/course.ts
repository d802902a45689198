import { type Arranged, arranged, asDrawn } from "#core/rig/arranged.ts";
import type { Move } from "#core/rig/moves.ts";
import type { Rig } from "#core/rig/rig.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import { arriving, staying } from "#core/rig/staying.ts";
import type { Probability } from "#core/units/units.ts";

/** What one move does to one fault: how likely it stays if it is there, and the share of its odds it comes anew with. */
interface Touch {
  readonly fault: RigFault;
  /** How many moves there are up to this one. */
  readonly epoch: number;
  readonly stays: Probability;
  readonly comes: number;
}

/** A rig under a list of moves. Epoch zero is before the first, one after it, and so on. */
export interface Course {
  readonly moves: readonly Move[];
  /** What is plugged where, epoch by epoch. */
  readonly rigs: readonly Rig[];
  /** What is plugged where now, and what could be put back. */
  readonly state: Arranged;
  readonly now: number;
  readonly touches: ReadonlyMap<RigFault, readonly Touch[]>;
}

/** Follows moves through a rig; `faultsIn` gives every fault there may be in some arrangements of it. */
export function courseOf(
  drawn: Rig,
  moves: readonly Move[],
  faultsIn: (rigs: readonly Rig[]) => readonly RigFault[],
): Course {
  const rigs: Rig[] = [drawn];
  let state: Arranged = asDrawn(drawn);
  for (const move of moves) {
    state = arranged(state, move);
    rigs.push(state.rig);
  }
  const faults = moves.length === 0 ? [] : faultsIn(rigs);
  const touches = new Map<RigFault, Touch[]>();
  for (const [at, move] of moves.entries())
    for (const touch of touched(rigs[at] ?? drawn, move, at + 1, faults))
      touches.set(touch.fault, [...(touches.get(touch.fault) ?? []), touch]);
  return { moves, rigs, state, now: moves.length, touches };
}

function touched(
  before: Rig,
  move: Move,
  epoch: number,
  faults: readonly RigFault[],
): readonly Touch[] {
  const all = faults.map((fault) => ({
    fault,
    epoch,
    stays: staying(fault, move, before),
    comes: arriving(fault, move),
  }));
  return all.filter(({ stays, comes }) => stays < 1 || comes > 0);
}

/** A fault that is there for a while: from one epoch until before another. */
export interface Life {
  readonly fault: RigFault;
  readonly from: number;
  readonly until: number;
  /** Odds against its not being there at all. */
  readonly odds: number;
}

export const isThere = ({ from, until }: Life, epoch: number): boolean =>
  from <= epoch && epoch < until;

/** The faults of some lives that are there in an epoch. */
export const thereAt = (lives: readonly Life[], epoch: number): readonly RigFault[] =>
  lives.filter((life) => isThere(life, epoch)).map(({ fault }) => fault);

/** Every life a fault may have had: there from the start or come with a new part, gone with the first move that took it along. */
export function livesOf(fault: RigFault, { touches }: Course): readonly Life[] {
  const mine = touches.get(fault) ?? [];
  const odds = fault.weight / (10_000 - fault.weight);
  return [0, ...mine.filter(({ comes }) => comes > 0).map(({ epoch }) => epoch)].flatMap((from) => {
    const comes = mine.find(({ epoch }) => epoch === from)?.comes ?? 1;
    return spans(from, mine).map(({ until, share }) => ({
      fault,
      from,
      until,
      odds: odds * comes * share,
    }));
  });
}

/** When a fault that is there from an epoch on may go, and how likely each is. */
function spans(from: number, touches: readonly Touch[]) {
  const ends: { until: number; share: Probability }[] = [];
  let left = 1;
  for (const { epoch, stays } of touches) {
    if (epoch <= from || stays === 1) continue;
    ends.push({ until: epoch, share: left * (1 - stays) });
    left *= stays;
  }
  return [...ends, { until: Number.POSITIVE_INFINITY, share: left }].filter(
    ({ share }) => share > 0,
  );
}

/** The last epoch, up to one, at which some faults were touched; zero where none was. */
export function lastTouched(
  { touches }: Course,
  about: (fault: RigFault) => boolean,
  epoch: number,
): number {
  let last = 0;
  for (const [fault, each] of touches)
    if (about(fault))
      for (const touch of each) if (touch.epoch <= epoch) last = Math.max(last, touch.epoch);
  return last;
}
