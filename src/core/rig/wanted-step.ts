import { inMono, inOrder, turnedBy } from "#core/parts/sides.ts";
import { real } from "#core/units/complex.ts";
import { straight } from "./behaviour.ts";
import { controlOf } from "./controls.ts";
import { type BuiltRig, clientId, type WantedFeed } from "./rig.ts";
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

/** What is sent to one position because somebody there wants it so: nothing to find, it is meant. */
export function sentAs(wants: WantedFeed): Step {
  const { left, right } = inOrder(
    inMono(1),
    turnedBy(wants === "right ear" ? 0 : 1, wants === "left ear" ? 0 : 1),
  );
  return {
    id: `${clientId} of one`,
    shape: `sent as ${wants}`,
    called: ({ name }) => name,
    owns: () => false,
    branch: () => 0,
    behaviour: () => ({ ...straight, gains: [left.map(real), right.map(real)] }),
  };
}
