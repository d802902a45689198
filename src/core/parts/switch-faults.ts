import type { Seconds } from "#core/units/units.ts";
import type { FaultName } from "./fault-names.ts";
import type { Fault } from "./part.ts";

const turn: Seconds = 5;

/** What a fault of controls need not say: where it is, which others it shuts out, whether a look shows it, seconds to put it right. */
export type Setting = Partial<Pick<Fault, "at" | "slot" | "seen" | "repair">>;

/**
 * Controls that stand wrong, by their values. At 'settings', seen and put right by a hand unless told otherwise; no two of the same first
 * control can both be there.
 */
export const setFault = (
  name: FaultName,
  values: Readonly<Record<string, number>>,
  weight: number,
  { at = "settings", slot, seen = true, repair = turn }: Setting = {},
): Fault => ({
  name,
  at,
  edits: Object.entries(values).map(([control, value]) => ({ edit: "control", control, value })),
  weight,
  slot: slot ?? Object.keys(values)[0] ?? name,
  seen,
  repair,
});

/** A knob or switch that stands wrong: a look at the part shows it, a hand puts it right. */
export const switchFault = (
  name: FaultName,
  control: string,
  value: number,
  weight: number,
  at = "settings",
): Fault => setFault(name, { [control]: value }, weight, { at });
