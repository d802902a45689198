import type { Decibels, Ohms } from "#core/units/units.ts";

/** What a data sheet says sound pressure per: a milliwatt, a volt, or it does not say. */
export const sensitivityUnits = ["dB/mW", "dB/V", "dB"] as const;
export type SensitivityUnit = (typeof sensitivityUnits)[number];

/** From a milliwatt to a volt: a milliwatt in Z ohms is the square root of Z / 1000 volts. */
export const perVoltOf = (perMilliwatt: Decibels, ohms: Ohms): Decibels =>
  perMilliwatt + 10 * Math.log10(1000 / ohms);

/** From a volt to a milliwatt. */
export const perMilliwattOf = (perVolt: Decibels, ohms: Ohms): Decibels =>
  perVolt - 10 * Math.log10(1000 / ohms);

/** Sound pressure level of one volt, and what it may be where a sheet can be read in two ways. */
export interface PerVolt {
  readonly value: Decibels;
  readonly low: Decibels;
  readonly high: Decibels;
}

/** What a data sheet's number makes of one volt. 'dB' alone is taken as of a milliwatt, which is commoner, and may be of a volt. */
export function perVolt(value: Decibels, unit: SensitivityUnit, ohms: Ohms): PerVolt {
  const ofMilliwatt = perVoltOf(value, ohms);
  if (unit === "dB/V") return { value, low: value, high: value };
  if (unit === "dB/mW") return { value: ofMilliwatt, low: ofMilliwatt, high: ofMilliwatt };
  return {
    value: ofMilliwatt,
    low: Math.min(value, ofMilliwatt),
    high: Math.max(value, ofMilliwatt),
  };
}

/** Headphones make more of a volt than this only if the number is of something else. Common practice, no source. */
const mostPerVolt: Decibels = 136;
/** And less of a milliwatt hardly ever. Common practice, no source. */
const leastPerMilliwatt: Decibels = 78;

/** Why a sheet's number should be looked at again. */
export type SensitivityDoubt = "unit not said" | "too loud for a milliwatt" | "too soft for a volt";

/** What speaks against a number as it was told: its unit, or a value that fits the other unit better. */
export function doubtOf(
  value: Decibels,
  unit: SensitivityUnit,
  ohms: Ohms,
): SensitivityDoubt | undefined {
  if (unit === "dB") return "unit not said";
  if (unit === "dB/mW" && perVoltOf(value, ohms) > mostPerVolt) return "too loud for a milliwatt";
  if (unit === "dB/V" && perMilliwattOf(value, ohms) < leastPerMilliwatt)
    return "too soft for a volt";
  return undefined;
}
