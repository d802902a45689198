import type { Seconds } from "#core/units/units.ts";
import type { FaultName } from "./fault-names.ts";
import type { Fault } from "./part.ts";

const turn: Seconds = 5;

/** A knob or switch that stands wrong: a look at the part shows it, a hand puts it right. */
export const switchFault = (
  name: FaultName,
  control: string,
  value: number,
  weight: number,
  at = "settings",
): Fault => ({
  name,
  at,
  edits: [{ edit: "control", control, value }],
  weight,
  slot: control,
  seen: true,
  repair: turn,
});
