import { meterView, shows } from "#core/proving/meter-view.ts";
import type { Proof } from "#core/proving/proof.ts";
import { untriedBy } from "#core/proving/readings-left.ts";
import { wiringOf } from "#core/proving/wiring.ts";
import type { Derived } from "#core/session/derive.ts";
import type { DrawnWire } from "#ui/parts/lead-drawing.tsx";

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
