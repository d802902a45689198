import { arranged } from "#core/rig/arranged.ts";
import type { Move } from "#core/rig/moves.ts";
import { build, wornAt } from "#core/rig/rig.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import { staying } from "#core/rig/staying.ts";
import type { Seconds } from "#core/units/units.ts";
import type { Era } from "./era.ts";
import type { Model } from "./model.ts";
import { through } from "./ways.ts";

/** A move made to see what changes, and taken back afterwards. */
export interface Trial {
  readonly move: Move;
  /** To make it and to take it back. */
  readonly seconds: Seconds;
  /** What the way to the position does after it, if some faults were there before. */
  readonly after: (faults: readonly RigFault[]) => number;
}

/** To turn headphones round, and to exchange them with a neighbour's. Handbook, section 8. */
export const turn: Seconds = 8;
const exchange: Seconds = 30;

/**
 * What can be tried at a position: the headphones turned round, and exchanged with those of another that is known to be well. Nobody tries
 * either with what goes into an ear.
 */
export function trialsAt(
  model: Model,
  era: Era,
  position: string,
  well: readonly string[],
): readonly Trial[] {
  const { rig } = era.course.state;
  const built = build(rig);
  const worn = wornAt(rig, position);
  if (built.part(worn).oneListener) return [];
  const plug = rig.plugged.find(({ part }) => part === worn);
  const other = well
    .map((one) => wornAt(rig, one))
    .find((one) => built.part(one).kind === built.part(worn).kind && one !== worn);
  return [
    trial(model, era, position, { move: "turned round", position }, 2 * turn),
    ...(other === undefined || plug === undefined
      ? []
      : [trial(model, era, position, { move: "exchanged", parts: [worn, other] }, 2 * exchange)]),
  ];
}

function trial(
  { pool, waysOf }: Model,
  { course }: Era,
  position: string,
  move: Move,
  seconds: Seconds,
): Trial {
  const before = course.state.rig;
  const way = waysOf(arranged(course.state, move).rig).to(position);
  return {
    move,
    seconds,
    after: (faults) =>
      through(
        pool,
        way,
        faults.filter((fault) => staying(fault, move, before) >= 0.5),
      ),
  };
}
