import { arranged, asDrawn } from "#core/rig/arranged.ts";
import { behaviourAt, earMatrix, relativeGains } from "#core/rig/ear-matrix.ts";
import { effectOf, type Gains, signed } from "#core/rig/effect.ts";
import type { Move } from "#core/rig/moves.ts";
import { type BuiltRig, build, clientId, type Rig } from "#core/rig/rig.ts";
import { type RigFault, rigFaults } from "#core/rig/rig-faults.ts";
import { staying } from "#core/rig/staying.ts";
import { size } from "#core/units/complex.ts";
import { seeded } from "#core/units/random.ts";

/** A simulated rig with a hidden fault. It knows the fault; nothing that diagnoses may know it. */
export interface Bench {
  readonly seed: number;
  readonly hidden: RigFault;
  /**
   * Real gains of the four ways to a position's ears after some moves, one for a healthy one. A fault that comes and goes is there or not
   * by the number of the playing.
   */
  readonly gains: (position: string, moves: readonly Move[], playing: number) => Gains;
  /** The faults, by id, that a look at a place shows after some moves. */
  readonly seen: (place: string, moves: readonly Move[]) => readonly string[];
  /** Whether the headphones at a position sit the wrong way round. */
  readonly backwards: (position: string, moves: readonly Move[]) => boolean;
  /** Whether the hidden fault is still there after some moves. */
  readonly there: (moves: readonly Move[]) => boolean;
}

/** The rig with a fault that the seed chose, by the odds of each; the same seed, the same fault. */
export function hide(plan: Rig, seed: number): Bench {
  const { rig, can } = playable(plan);
  const hidden = drawn(can, seeded(seed)());
  if (hidden === undefined) throw new Error(`nothing can go wrong in ${rig.name}`);
  const world = (moves: readonly Move[]) => worldAfter(plan, hidden, moves, seed);
  return {
    seed,
    hidden,
    gains: (position, moves, playing) => {
      const { rig: now, there } = world(moves);
      const healthy = Math.max(...earMatrix(rig, position, []).flat().map(size));
      return signed(earMatrix(now, position, there.filter(shows(seed, playing))), healthy);
    },
    seen: (place, moves) =>
      world(moves)
        .there.filter((fault) => fault.seen && fault.place === place)
        .map(({ id }) => id),
    backwards: (position, moves) => {
      const { rig: now, there } = world(moves);
      return behaviourAt(now, position, there).worn < 0;
    },
    there: (moves) => world(moves).there.length > 0,
  };
}

/** What is plugged where after some moves, and the hidden fault where they left it: what cures half of the time is drawn by the seed. */
function worldAfter(plan: Rig, hidden: RigFault, moves: readonly Move[], seed: number) {
  let state = asDrawn(plan);
  let there = true;
  for (const [at, move] of moves.entries()) {
    there &&= seeded(seed * 31 + at)() < staying(hidden, move, state.rig);
    state = arranged(state, move);
  }
  return { rig: build(state.rig), there: there ? [hidden] : [] };
}

/** Whether a fault is there at one playing. */
const shows =
  (seed: number, playing: number) =>
  ({ comesAndGoes }: RigFault): boolean =>
    !comesAndGoes || seeded(seed * 1009 + playing)() < 0.5;

interface Playable {
  readonly rig: BuiltRig;
  /** The faults it can play. */
  readonly can: readonly RigFault[];
}

const known = new WeakMap<Rig, Playable>();

function playable(plan: Rig): Playable {
  const found = known.get(plan);
  if (found !== undefined) return found;
  const rig = build(plan);
  const made = { rig, can: rigFaults(rig).filter((fault) => plays(rig, fault)) };
  known.set(plan, made);
  return made;
}

/** The fault at a share, from zero to one, of all odds laid end to end. */
function drawn(faults: readonly RigFault[], share: number): RigFault | undefined {
  let left = share * faults.reduce((sum, { weight }) => sum + weight, 0);
  return faults.find(({ weight }) => {
    left -= weight;
    return left < 0;
  });
}

/** A fault the simulated rig can play: one that is in the gear or in how it is worn, and can be heard somewhere; a wanted feed is none. */
const plays = (rig: BuiltRig, fault: RigFault): boolean =>
  fault.name !== "mirrors left and right" &&
  fault.part !== clientId &&
  rig.positions.some(({ id }) => effectOf(relativeGains(rig, id, [fault])) !== "straight");
