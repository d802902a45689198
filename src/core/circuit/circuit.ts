import type { Farads, Ohms } from "#core/units/units.ts";

/** A point of a circuit, by name. */
export type Node = string;

/** The node every voltage is measured against. */
export const earth: Node = "earth";

/** What stands for an open contact, and for a short. The handbook's values (section 5). */
export const open: Ohms = 1e9;
export const short: Ohms = 0.1;

interface Between {
  readonly name: string;
  readonly a: Node;
  readonly b: Node;
}

export interface Resistor extends Between {
  readonly kind: "resistor";
  readonly ohms: Ohms;
}

export interface Capacitor extends Between {
  readonly kind: "capacitor";
  readonly farads: Farads;
}

/**
 * A voltage of `a` over `b` behind a resistance. `drive` says how many volts for one volt of each named signal, so that one
 * circuit serves every signal that can enter it.
 */
export interface Source extends Between {
  readonly kind: "source";
  readonly ohms: Ohms;
  readonly drive: Readonly<Record<string, number>>;
  /** A control of the part that turns it up or down, by name. */
  readonly level?: string;
}

export type Element = Resistor | Capacitor | Source;

/** A circuit is plain data; solving it leaves it alone. */
export type Circuit = readonly Element[];
