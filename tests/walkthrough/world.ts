import { type Arranged, arranged, asDrawn } from "#core/rig/arranged.ts";
import type { Gains } from "#core/rig/effect.ts";
import type { Move } from "#core/rig/moves.ts";
import type { Rig } from "#core/rig/rig.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import { staying } from "#core/rig/staying.ts";
import type { SignalName } from "#core/signals/catalogue.ts";
import type { Random } from "#core/units/random.ts";
import type { Recording } from "#tests/robot/ears.ts";

/** A world to walk: what is planted, how often the person's finger slips, and what else they hear. */
export interface World {
  readonly rig: Rig;
  readonly planted: readonly RigFault[];
  readonly slips: number;
  readonly random: Random;
  /** Gains heard in place of the rig's own: a plant that is on no list. */
  readonly gains?: (signal: SignalName) => Gains;
  /** What happens to a recording on its way into the person: the controls. */
  readonly spoilt?: (recording: Recording) => Recording;
}

/** A world as some moves have left it. */
export interface Now extends World {
  readonly state: Arranged;
  readonly there: readonly RigFault[];
}

export const begun = (world: World): Now => ({
  ...world,
  state: asDrawn(world.rig),
  there: world.planted,
});

/** What a hand does to a world: what is cured half of the time is drawn. */
export const moved = (now: Now, move: Move): Now => ({
  ...now,
  there: now.there.filter((fault) => now.random() < staying(fault, move, now.state.rig)),
  state: arranged(now.state, move),
});
