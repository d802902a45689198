import { real } from "#core/units/complex.ts";
import { straight } from "./behaviour.ts";
import { controlOf } from "./controls.ts";
import type { BuiltRig } from "./rig.ts";
import type { Step } from "./steps.ts";

/** From what a box takes in to the signals it sends; of headphones, from the drivers to the ears. */
export const inside = (rig: BuiltRig, id: string): Step => ({
  id: `inside ${id}`,
  shape: `inside ${id} ${JSON.stringify(rig.parts.find((part) => part.id === id)?.controls ?? {})}`,
  called: ({ name }) => name,
  owns: (fault) => fault.part === id && fault.at === "settings",
  branch: () => 0,
  behaviour: (faults, _, at) => {
    const part = rig.part(id);
    const control = controlOf(rig, id, faults);
    const rows = Object.values(part.through?.(control, at) ?? {});
    return {
      ...straight,
      gains: rows.map((row) => row.map((gain) => (typeof gain === "number" ? real(gain) : gain))),
      late: part.late?.(control) ?? 0,
    };
  },
});
