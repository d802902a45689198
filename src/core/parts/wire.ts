import type { Farads, Ohms } from "#core/units/units.ts";

/** Resistivity of annealed copper at 20 °C, ohm metres: 100 % IACS, 58.0 MS/m (IEC 1913). */
const copper = 1 / 58.0e6;

/** How much of its resistance at 20 °C copper gains a degree (IEC 1913). */
const gain = 0.00393;

/** The diameter of a bare conductor, millimetres, by its American wire gauge: the formula of ASTM B258. */
export const diameterOf = (gauge: number): number => 0.127 * 92 ** ((36 - gauge) / 39);

/** Ohms of one copper conductor by its gauge (AWG) and metres, taken as solid; at 20 °C unless told otherwise. */
export function conductorOhms(gauge: number, metres: number, celsius = 20): Ohms {
  const area = (Math.PI / 4) * (diameterOf(gauge) / 1000) ** 2;
  return ((copper * metres) / area) * (1 + gain * (celsius - 20));
}

/** How a piece of cable is made, and how its ends are. */
export interface Run {
  readonly metres: number;
  /** Of every conductor, AWG. */
  readonly gauge: number;
  /** Between its cores, or where it has one, between that and its screen; farads a metre. */
  readonly faradsPerMetre: Farads;
  /** A solder joint at the end of a conductor. */
  readonly joint: Ohms;
}

/** A conductor with its joint. `share` is how much of the run's length it is, from nothing (a bridge inside a plug) to one. */
export const runOhms = ({ metres, gauge, joint }: Run, share = 1): Ohms =>
  conductorOhms(gauge, metres * share) + joint;

/** Between two cores that run side by side along the whole length. */
export const runFarads = ({ metres, faradsPerMetre }: Run): Farads => metres * faradsPerMetre;

/**
 * What may be said of any lead. Typical is the handbook's (section 5): 3 m with 0.252 Ω a conductor, which is AWG 24, joints of 0.05 Ω, and 100 pF a
 * metre between cores.
 */
export const runParameters = {
  metres: { unit: "m", typical: 3, least: 0.05, most: 300 },
  gauge: { unit: "AWG", typical: 24, least: 4, most: 40 },
  faradsPerMetre: { unit: "F", typical: 100e-12, least: 1e-12, most: 1e-9 },
  joint: { unit: "Ω", typical: 0.05, least: 0.001, most: 1 },
} as const;

/** A run as it usually is. */
export const usualRun: Run = {
  metres: runParameters.metres.typical,
  gauge: runParameters.gauge.typical,
  faradsPerMetre: runParameters.faradsPerMetre.typical,
  joint: runParameters.joint.typical,
};
