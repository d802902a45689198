import { type Behaviour, follow } from "#core/rig/behaviour.ts";
import { circuitInto } from "#core/rig/circuit-step.ts";
import { inside } from "#core/rig/inside-step.ts";
import { midband } from "#core/rig/midband.ts";
import { isFed, reachInto } from "#core/rig/reach.ts";
import type { BuiltRig } from "#core/rig/rig.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import type { Hertz } from "#core/units/units.ts";

/**
 * What the way from the programme into a part does, up to a box's inputs or to the ears of whoever wears it: rows what comes out, columns the
 * programme's left and right, volts for one volt of it. A box itself counts from its input sockets on, as the load it is; what it takes in by
 * one input alone is in both of its sides.
 */
export function arrivingAt(
  rig: BuiltRig,
  part: string,
  faults: readonly RigFault[] = [],
  at: Hertz = midband,
): Behaviour {
  const way = takenIn(rig, part, faults, at);
  const { family, takes, through } = rig.part(part);
  if (through === undefined || (family !== "headphones" && takes.length > 1)) return way;
  const own = inside(rig, part);
  return follow(way, own.behaviour(faults.filter(own.owns), 0, at));
}

/** What a part takes in, one row for each of its inputs or drivers. */
function takenIn(rig: BuiltRig, part: string, faults: readonly RigFault[], at: Hertz): Behaviour {
  if (!isFed(rig, part)) throw new Error(`nothing feeds ${part}`);
  const step = circuitInto(rig, part);
  const { from, takers } = reachInto(rig, part);
  const box = inside(rig, from);
  const into = follow(
    box.behaviour(faults.filter(box.owns), 0, at),
    step.behaviour(faults.filter(step.owns), takers.indexOf(part), at),
  );
  return isFed(rig, from) ? follow(takenIn(rig, from, faults, at), into) : into;
}
