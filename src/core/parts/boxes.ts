import {
  type Capacitor,
  type Circuit,
  type Element,
  earth,
  type Node,
  open,
  type Resistor,
} from "#core/circuit/circuit.ts";
import type { Farads, Ohms, Volts } from "#core/units/units.ts";
import { point } from "./part.ts";
import type { Contact } from "./plugs.ts";

/** From a socket's bush to the metal of the box. Handbook, section 5. */
const bush: Ohms = 0.02;

/** The node every voltage inside a box refers to. */
export const chassis: Node = "chassis";

export const resistor = (name: string, a: Node, b: Node, ohms: Ohms): Resistor => ({
  kind: "resistor",
  name,
  a,
  b,
  ohms,
});
export const capacitor = (name: string, a: Node, b: Node, farads: Farads): Capacitor => ({
  kind: "capacitor",
  name,
  a,
  b,
  farads,
});

/** The signal that stands for the mains in a circuit, at 50 Hz; a programme's circuit has it at zero. */
export const hum = "mains hum";

/** How far one wall socket's earth is from another's, at 50 Hz (common practice, no source). */
export const earthDifference: Volts = 0.005;

/** How a box is powered, which decides how its chassis is tied to earth. */
export const supplies = ["mains-earthed", "floating", "battery"] as const;
export type Supply = (typeof supplies)[number];

/**
 * From a box's chassis to earth. An earthed mains lead: 0.1 Ω, and the few millivolts by which one wall socket's earth differs from another
 * (common practice, no source). A plug-top or two-pin supply: its filter only, 1 nF to half of 230 V, the handbook's middle value
 * (section 5). A battery: nothing but air.
 */
export function powered(supply: Supply, earthVolts: Volts = 0): Circuit {
  switch (supply) {
    case "mains-earthed":
      return [mainsEarth(earthVolts)];
    case "floating":
      return floating();
    case "battery":
      return [resistor("battery", chassis, earth, open)];
  }
}

/** An earthed mains lead. `volts` is how far this wall socket's earth is from the others', at 50 Hz. */
export const mainsEarth = (volts: Volts = 0): Element => ({
  kind: "source",
  name: "mains earth",
  a: chassis,
  b: earth,
  ohms: 0.1,
  drive: { [hum]: volts },
});

/** A plug-top or two-pin supply, by its filter's capacitance to half the mains. */
export const floating = (farads: Farads = 1e-9): Circuit => [
  { kind: "source", name: "mains", a: "mains", b: earth, ohms: 1, drive: { [hum]: 115 } },
  capacitor("supply", chassis, "mains", farads),
];

/** A socket's common spring to the chassis; of a jack, the sleeve's. */
export const sleeve = (socket: string, contact: Contact = "sleeve"): Element =>
  resistor(`${socket} bush`, point(socket, contact), chassis, bush);

/** One driven contact: `gain` volts for one of the bus, behind the stage's resistance. */
export const driven = (
  socket: string,
  contact: Contact,
  ohms: Ohms,
  drive: Readonly<Record<string, number>>,
  level?: string,
): Element => ({
  ...(level === undefined ? {} : { level }),
  kind: "source",
  name: `${socket} ${contact}`,
  a: point(socket, contact),
  b: chassis,
  ohms,
  drive,
});

/** One contact with a resistor to the chassis: an input, or the cold leg of an impedance-balanced output. */
export const loaded = (socket: string, contact: Contact, ohms: Ohms): Element =>
  resistor(`${socket} ${contact}`, point(socket, contact), chassis, ohms);
