import {
  type Capacitor,
  type Element,
  earth,
  type Node,
  type Resistor,
} from "#core/circuit/circuit.ts";
import type { Farads, Ohms } from "#core/units/units.ts";
import { point } from "./part.ts";

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

/** Ohms between the chassis of a box with an earthed mains lead and earth. Common practice, no source. */
export const mainsEarth = (): Element => resistor("mains earth", chassis, earth, 0.1);

/** A plug-top or two-pin supply leaves its box on earth by its filter only: 1 nF, the handbook's middle value (section 5). */
export const floating = (farads: Farads = 1e-9): Element =>
  capacitor("supply", chassis, earth, farads);

/** A socket's sleeve spring to the chassis. */
export const sleeve = (socket: string): Element =>
  resistor(`${socket} bush`, point(socket, "sleeve"), chassis, bush);

/** One driven contact: `gain` volts for one of the bus, behind the stage's resistance. */
export const driven = (
  socket: string,
  contact: "tip" | "ring",
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
export const loaded = (socket: string, contact: "tip" | "ring", ohms: Ohms): Element =>
  resistor(`${socket} ${contact}`, point(socket, contact), chassis, ohms);
