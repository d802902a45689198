import type { Seconds } from "#core/units/units.ts";
import type { FaultName } from "./fault-names.ts";
import type { Control, Fault } from "./part.ts";
import { picked, type Sides } from "./sides.ts";
import { setFault } from "./switch-faults.ts";

/** Which side of a digital link each side of a box takes (0 left, 1 right, -1 nothing), and how late it is, seconds. */
export const linkControls = { "left takes": 0, "right takes": 1, "left late": 0, "right late": 0 };

/** What the box makes of the link's two sides. */
export const linkSides = (control: Control): Sides =>
  picked(control("left takes"), control("right takes"));

/** Seconds by which the right side is later than the left; less than zero where the left is. */
export const linkLate = (control: Control): Seconds => control("right late") - control("left late");

/** Found in a menu and put right there (common practice, no source). */
const menu: Seconds = 30;

const patched = (name: FaultName, values: Readonly<Record<string, number>>, weight: number) =>
  setFault(name, values, weight, { slot: "subscription", repair: menu });
const late = (name: FaultName, control: string, seconds: Seconds) =>
  setFault(name, { [control]: seconds }, 6, { slot: "late", seen: false, repair: menu });

/** What is patched wrongly at a digital link (handbook, section 5). Odds: common practice, no source. */
export const linkFaults: readonly Fault[] = [
  patched("left side subscribed twice", { "right takes": 0 }, 25),
  patched("right side subscribed twice", { "left takes": 1 }, 25),
  patched("left side not subscribed", { "left takes": -1 }, 25),
  patched("right side not subscribed", { "right takes": -1 }, 25),
  patched("sides exchanged in the digital patch", { "left takes": 1, "right takes": 0 }, 20),
  patched("nothing subscribed", { "left takes": -1, "right takes": -1 }, 40),
  late("left side 0.3 ms late", "left late", 0.0003),
  late("left side 1 ms late", "left late", 0.001),
  late("right side 0.3 ms late", "right late", 0.0003),
  late("right side 1 ms late", "right late", 0.001),
];
