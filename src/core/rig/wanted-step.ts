import { inMono, inOrder, turnedBy } from "#core/parts/sides.ts";
import { real } from "#core/units/complex.ts";
import { straight } from "./behaviour.ts";
import { controlOf } from "./controls.ts";
import { type BuiltRig, clientId } from "./rig.ts";
import type { Step } from "./steps.ts";

/** What the feed is meant to be, before anything carries it: as the programme is, unless its client wanted less of it. */
export const wanted = (rig: BuiltRig): Step => ({
  id: clientId,
  shape: clientId,
  called: ({ name }) => name,
  owns: ({ part }) => part === clientId,
  branch: () => 0,
  behaviour: (faults) => {
    const control = controlOf(rig, clientId, faults);
    const { left, right } = inOrder(
      inMono(control("mono")),
      turnedBy(control("left ear"), control("right ear")),
    );
    return { ...straight, gains: [left.map(real), right.map(real)] };
  },
});
