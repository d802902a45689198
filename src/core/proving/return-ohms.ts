import type { MeasuredGains } from "#core/checks/finding.ts";
import { earMatrix } from "#core/rig/ear-matrix.ts";
import { type BuiltRig, wornAt } from "#core/rig/rig.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import type { Matrix } from "#core/units/matrix.ts";
import type { Ohms } from "#core/units/units.ts";

/** A resistance, and one standard deviation of it. */
export interface MeasuredOhms {
  readonly ohms: Ohms;
  readonly error: Ohms;
}

/** Beyond this, and a quarter, a load box tells no resistance from an open return. Handbook, section 7. */
const most: Ohms = 1250;
/** Where a search begins and ends. */
const [least, far] = [1e-4, 1e7];
/** What ten ohms leave in the other side at least, where both sides are driven. */
const leastShown = 0.005;
/** Of the resistors, and of what the output has in series with them. Handbook, section 7. */
const tolerance = 0.01;

/**
 * The resistance of a lead's return beyond what the lead as drawn has, as a load box with one star point for both sides shows it: what each
 * side leaves in the other, upside down, against what it leaves in its own. The levels themselves do not matter. Worked out by the
 * circuit, so that what the inputs load is in it. Less than nothing, down to what the lead has, where its return is better than drawn; not
 * shown where one signal alone is sent.
 * Throws on a position that ends in no load box with one star point.
 */
export function returnOhms(
  rig: BuiltRig,
  position: string,
  gains: MeasuredGains,
  error = 0,
): MeasuredOhms | "open" | "not shown" {
  const box = wornAt(rig, position);
  const bush = rig
    .part(box)
    .sockets.flatMap(({ circuit }) => circuit)
    .find(({ name }) => name === "in bush");
  if (bush?.kind !== "resistor" || rig.part(box).kind !== "load box")
    throw new RangeError(`${position} does not end in a load box with one star point`);
  const at = (more: Ohms): number =>
    shareOf(partsOf(earMatrix(rig, position, [inReturn(box, bush.ohms + more)])));
  if (!(at(10) - at(0) > leastShown)) return "not shown";
  const [[ll], [lr], [rl], [rr]] = gains;
  const measured = shareOf([ll, lr, rl, rr]);
  const ohms = search(at, measured, bush.ohms);
  // Below the drawing there is a straight line, and nothing to solve.
  const near = Math.max(ohms, 0);
  const steep = (at(near * 1.01 + 0.01) - at(near)) / (near * 0.01 + 0.01);
  const noise = (Math.SQRT2 * error) / Math.abs(ll + rr) / steep;
  return ohms > most ? "open" : { ohms, error: Math.hypot(noise, tolerance * Math.abs(ohms)) };
}

/** What crosses over, upside down, in shares of what stays: from nothing up to one with an open return. */
const shareOf = ([ll, lr, rl, rr]: readonly [number, number, number, number]): number =>
  -(lr + rl) / (ll + rr);

const partsOf = (matrix: Matrix): readonly [number, number, number, number] => {
  const at = (row: number, column: number) => matrix[row]?.[column]?.re ?? 0;
  return [at(0, 0), at(0, 1), at(1, 0), at(1, 1)];
};

/** More ohms, more share: by halves, on a scale of equal ratios; below the drawing along a straight line. */
function search(at: (more: Ohms) => number, measured: number, bush: Ohms): Ohms {
  const none = at(0);
  if (measured <= none) {
    const slope = (at(0.1) - none) / 0.1;
    return Math.max(-10 * bush - 1, (measured - none) / slope);
  }
  let [low, high] = [least, far];
  for (let round = 0; round < 60; round++) {
    const middle = Math.sqrt(low * high);
    if (at(middle) < measured) low = middle;
    else high = middle;
  }
  return high;
}

/** The return spring of the box with so many ohms: wherever they are in a return, the box sees the same. */
const inReturn = (box: string, ohms: Ohms): RigFault => ({
  id: `${box} / return of ${ohms} ohms`,
  name: "something not on the list",
  part: box,
  place: box,
  at: "in",
  edits: [{ edit: "ohms", element: "in bush", ohms }],
  weight: 0,
  slot: "",
  seen: false,
  repair: 0,
});
