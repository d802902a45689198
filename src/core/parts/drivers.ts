import type { Circuit } from "#core/circuit/circuit.ts";
import { open } from "#core/circuit/circuit.ts";
import type { Ohms } from "#core/units/units.ts";
import { resistor } from "./boxes.ts";
import type { FaultName } from "./fault-names.ts";
import { type Edit, type Fault, type Probe, point } from "./part.ts";
import type { Contact } from "./plugs.ts";

export const sides = ["left", "right"] as const;
export type Side = (typeof sides)[number];

/** Solder joints in the cups. Handbook, section 5. */
export const cupJoint: Ohms = 0.1;

/** Two drivers behind the end of a cord, whose nodes are named `cups.tip` and so on. */
export interface Cups {
  /** Of each driver. */
  readonly ohms: Ohms;
  /** Which contact of the cord both of them return by. */
  readonly common: Contact;
  /** In each of the two wires of a driver, besides its joint: nothing where one cord serves both. */
  readonly lead: Ohms;
  /** Where the two returns meet. */
  readonly meeting: Ohms;
}

/** The drivers, each between its own joint and its own return. */
export const driversIn = ({ ohms, common, lead, meeting }: Cups): Circuit => [
  ...sides.flatMap((side) => [
    resistor(
      `${side} joint`,
      point("cups", side === "left" ? "tip" : "ring"),
      `${side} plus`,
      lead + cupJoint / 2,
    ),
    resistor(`${side} driver`, `${side} plus`, `${side} minus`, ohms),
    resistor(`${side} return`, `${side} minus`, "common", lead + cupJoint / 2),
  ]),
  resistor("common joint", "common", point("cups", common), meeting),
];

/** What the drivers get, left first. */
export const driverProbes: readonly Probe[] = sides.map((side) => ({
  plus: `${side} plus`,
  minus: `${side} minus`,
}));

/** A side with its two wires exchanged: what it plays is upside down. */
export const reversed = (side: Side): readonly Edit[] => [
  { edit: "rewire", element: `${side} joint`, b: `${side} minus` },
  { edit: "rewire", element: `${side} return`, a: `${side} plus` },
];

/** A fault of one side that no eye sees, and that only another part mends. */
export const sideFault = (
  name: FaultName,
  side: Side,
  weight: number,
  edits: readonly Edit[],
): Fault => ({ name, at: "body", edits, weight, slot: `${side} driver`, seen: false, repair: 60 });

/** Odds in 10,000, of each side. Common practice, no source. */
export interface DriverOdds {
  readonly dead: number;
  readonly inverted: number;
  readonly bothInverted: number;
}

/** Water and age: as ohms in series, in shares of the driver's own. Takes 6 to 8 dB away behind a low output (common practice, no source). */
const weakened = 1.5;

/** What is left of a voice coil whose turns touch: 4 Ω of 32, and never more than an eighth (common practice, no source). */
const shortedCoil = (ohms: Ohms): Ohms => Math.min(4, ohms / 8);

/** What goes wrong in the cups. Both sides upside down cannot be heard, and is a fault all the same: beside another set it is. */
export const driverFaults = (ohms: Ohms, odds: DriverOdds): readonly Fault[] => [
  ...sides.flatMap((side) => [
    sideFault(`${side} driver dead`, side, odds.dead, [
      { edit: "ohms", element: `${side} joint`, ohms: open },
    ]),
    sideFault(`${side} driver inverted`, side, odds.inverted, reversed(side)),
    sideFault(`${side} driver weak`, side, 6, [
      { edit: "ohms", element: `${side} joint`, ohms: weakened * ohms },
    ]),
    sideFault(`${side} voice coil shorted`, side, 2, [
      { edit: "ohms", element: `${side} driver`, ohms: shortedCoil(ohms) },
    ]),
  ]),
  sideFault("both drivers inverted", "left", odds.bothInverted, sides.flatMap(reversed)),
];
