import type { Supply } from "./boxes.ts";
import type { Fault } from "./part.ts";
import { setFault, switchFault } from "./switch-faults.ts";

/** What a box on its own power has to lose. */
export const powerControls = { power: 1 };

/** A change of battery. Handbook, section 8. */
const newBattery = 30;

/** Off, or empty. `weight` is the odds of off; the others follow (common practice, no source). */
export const powerFaults = (supply: Supply, weight: number): readonly Fault[] => [
  switchFault("power off", "power", 0, weight),
  ...(supply === "battery"
    ? [setFault("battery flat", { power: 0 }, weight / 2, { repair: newBattery })]
    : []),
];
