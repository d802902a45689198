import { readingsIn } from "#core/proving/meter-belief.ts";
import {
  isLoose,
  kindOfOhms,
  type MeterView,
  meterView,
  type Pair,
} from "#core/proving/meter-view.ts";
import type { Proof } from "#core/proving/proof.ts";
import { wiringOf } from "#core/proving/wiring.ts";
import type { BuiltRig } from "#core/rig/rig.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import type { Derived } from "#core/session/derive.ts";
import type { DrawnWire } from "#ui/parts/lead-drawing.tsx";

/** Whether a meter would show something else at two contacts. */
function shows(view: MeterView, fault: RigFault, pair: Pair): boolean {
  const [sound, shown] = [view.shown([], pair), view.shown([fault], pair)];
  const kinds = new Set(sound.map(kindOfOhms));
  return isLoose(shown) || shown.some((one) => !kinds.has(kindOfOhms(one)));
}

/** Tells whether at two contacts something could still be wrong that no reading spoke against. */
export function untriedBy(derived: Derived, { untested }: Proof): (pair: Pair) => boolean {
  const view = meterView(derived.model.rig);
  const read = readingsIn(derived.happenings).map(({ asked }) => asked);
  return (pair) => !read.some(isOf(pair)) && untested.some((fault) => shows(view, fault, pair));
}

/** Whether a reading was of these two, whichever probe on which. */
export const isOf =
  ({ from, to }: Pair) =>
  (asked: Pair): boolean =>
    (asked.from === from && asked.to === to) || (asked.from === to && asked.to === from);

/** The lead as it was meant, with what is not tried yet and what is suspected. */
export function soFar(derived: Derived, proof: Proof): readonly DrawnWire[] {
  const { rig } = derived.model;
  const view = meterView(rig);
  const untried = untriedBy(derived, proof);
  return wiringOf(rig, []).map(({ from, to }) => {
    if (proof.believed.some((fault) => shows(view, fault, { from, to })))
      return { from, to, look: "suspected" };
    return { from, to, look: untried({ from, to }) ? "untried" : "as intended" };
  });
}

/** How many readings are left where each is as it should be: those that try all that was not tried, the most at once first. */
export function readingsLeft(rig: BuiltRig, { untested }: Proof): number {
  const view = meterView(rig);
  const tries = view.pairs.map((pair) => new Set(untested.filter((one) => shows(view, one, pair))));
  let left = untested;
  for (let count = 0; ; count++) {
    const tried = (faults: ReadonlySet<RigFault>) => left.filter((one) => faults.has(one)).length;
    const [first, ...rest] = tries;
    const most = rest.reduce((a, b) => (tried(b) > tried(a) ? b : a), first ?? new Set());
    if (tried(most) === 0) return count;
    left = left.filter((one) => !most.has(one));
  }
}
