import { type Heard, heards } from "#core/listening/heard.ts";
import { percept } from "#core/listening/percept.ts";
import type { Behaviour } from "#core/rig/behaviour.ts";
import { ears } from "#core/rig/ear-matrix.ts";
import { add, scale, size, zero } from "#core/units/complex.ts";

/** Where a source is heard, panned hard left, to the middle and hard right; and one that is upside down on one side. */
export interface Panning {
  readonly left: Heard;
  readonly middle: Heard;
  readonly right: Heard;
  readonly wide: Heard;
}

/** Where most people would hear each, from what the way to the ears does. */
export function panningOf(way: Behaviour, reference = 1): Panning {
  const rows = ears(way);
  const heard = (left: number, right: number): Heard => {
    const [first = zero, second = zero] = rows.map(([fromLeft = zero, fromRight = zero]) =>
      add(scale(fromLeft, left), scale(fromRight, right)),
    );
    const chances = percept(first, second, reference, way.late * way.worn);
    return heards[chances.indexOf(Math.max(...chances))] ?? "nothing";
  };
  return { left: heard(1, 0), middle: heard(1, 1), right: heard(0, 1), wide: heard(1, -1) };
}

/** Whether turning a pan knob is heard at all. */
export const panMoves = ({ left, middle, right }: Panning): boolean =>
  left !== right || left !== middle;

/** The greatest gain of a way, to judge its levels by. */
export const greatest = (way: Behaviour): number => Math.max(...way.gains.flat().map(size), 1e-12);
