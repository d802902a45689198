import { type Complex, multiply } from "#core/units/complex.ts";
import type { Matrix } from "#core/units/matrix.ts";
import type { Hertz, Seconds } from "#core/units/units.ts";
import { follow } from "./behaviour.ts";
import { ears } from "./ear-matrix.ts";
import type { BuiltRig } from "./rig.ts";
import type { RigFault } from "./rig-faults.ts";
import { stepsTo } from "./steps.ts";

/**
 * The ear matrix of a position under a fault set at any frequency, with what comes late in its phase: for whoever renders what is heard
 * there. The way is looked up once.
 */
export function earsAt(
  rig: BuiltRig,
  position: string,
  faults: readonly RigFault[],
): (at: Hertz) => Matrix {
  const steps = stepsTo(rig, position).map((step) => ({
    step,
    own: faults.filter(step.owns),
    branch: step.branch(position),
  }));
  return (at) => {
    const way = steps
      .map(({ step, own, branch }) => step.behaviour(own, branch, at))
      .reduce(follow);
    const [left = [], right = []] = ears(way);
    const late = way.late * way.worn;
    return [delayed(left, Math.max(0, -late), at), delayed(right, Math.max(0, late), at)];
  };
}

function delayed(row: readonly Complex[], by: Seconds, at: Hertz): readonly Complex[] {
  if (by === 0) return row;
  const turn = -2 * Math.PI * at * by;
  return row.map((gain) => multiply(gain, { re: Math.cos(turn), im: Math.sin(turn) }));
}
