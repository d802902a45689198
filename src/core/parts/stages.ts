import { type Circuit, open } from "#core/circuit/circuit.ts";
import type { Farads, Ohms } from "#core/units/units.ts";
import { capacitor, chassis, driven, loaded, resistor, sleeve } from "./boxes.ts";
import { point, type Socket } from "./part.ts";
import type { Contact } from "./plugs.ts";

/**
 * How an output with one signal drives its two legs (handbook, section 3). 'unbalanced' has no cold leg: a jack with two springs, or an XLR
 * whose pin 3 is left alone. With 'ring tied to sleeve' the cold contact is there, on the screen.
 */
export const balancings = [
  "impedance-balanced",
  "actively balanced",
  "cross-coupled",
  "transformer",
  "quasi-balanced",
  "unbalanced",
  "unbalanced, ring tied to sleeve",
] as const;
export type Balancing = (typeof balancings)[number];

/**
 * Source resistance of a leg. Impedance-balanced, actively balanced, cross-coupled: handbook, section 4. The others lie in the ranges of
 * section 3 (common practice, no source).
 */
const usualLegOhms: Readonly<Record<Balancing, Ohms>> = {
  "impedance-balanced": 150,
  "actively balanced": 100,
  "cross-coupled": 50,
  transformer: 150,
  "quasi-balanced": 150,
  unbalanced: 220,
  "unbalanced, ring tied to sleeve": 220,
};

/** The parameter of a box that says so. */
export const legs = { unit: "Ω", typical: 0, least: 0, most: 1000 } as const;

/** Sockets that can carry one balanced signal. */
export const connectors = ["jack", "XLR"] as const;
export type Connector = (typeof connectors)[number];

interface Legs {
  readonly hot: Contact;
  readonly cold: Contact;
  readonly screen: Contact;
}

/** Which contact is which leg. Pin 2 is hot: AES14 (facts, section 2). */
export const legsOf: Readonly<Record<Connector, Legs>> = {
  jack: { hot: "tip", cold: "ring", screen: "sleeve" },
  XLR: { hot: "pin 2", cold: "pin 3", screen: "pin 1" },
};

/** An output with one signal. */
export interface MonoOutput {
  readonly name: string;
  readonly connector: Connector;
  /** The signal inside the box that it sends. */
  readonly bus: string;
  readonly by: Balancing;
  /** Of each leg; 0 or left out for what is usual. */
  readonly ohms?: Ohms;
  /** The control that turns it up and down. */
  readonly level?: string;
}

/**
 * What holds the middle of a cross-coupled stage to the chassis. 5 kΩ gives the handbook's +5.9, −3.6 (section 4) and −9.5 dB (section 5)
 * at once.
 */
const crossCoupledHold: Ohms = 5000;
/** Winding to chassis. 200 pF gives the −38 dB of the handbook's section 4 at 1 kHz. */
const winding: Farads = 200e-12;
const tie: Ohms = 0.02;

/** The socket of an output with one signal: its kind, and what drives it. Each leg has the size of 1 against one of the bus. */
export const monoOutput = (output: MonoOutput): Pick<Socket, "kind" | "circuit"> => ({
  kind: kindFor(output),
  circuit: stage(output),
});

function kindFor({ connector, by }: MonoOutput): "XLR" | "TS" | "TRS" {
  if (connector === "XLR") return "XLR";
  return by === "unbalanced" ? "TS" : "TRS";
}

function stage(output: MonoOutput): Circuit {
  const { name, connector, by, bus, level } = output;
  const { hot, cold, screen } = legsOf[connector];
  const ohms = output.ohms || usualLegOhms[by];
  const tip = driven(name, hot, ohms, { [bus]: 1 }, level);
  const bush = sleeve(name, screen);
  switch (by) {
    case "impedance-balanced":
      return [tip, loaded(name, cold, ohms), bush];
    case "actively balanced":
      return [tip, driven(name, cold, ohms, { [bus]: -1 }, level), bush];
    case "cross-coupled":
      return [
        ...aroundMiddle(output, ohms),
        resistor(`${name} hold`, middle(name), chassis, crossCoupledHold),
        bush,
      ];
    case "transformer":
      return [
        ...aroundMiddle(output, ohms),
        capacitor(`${name} winding`, middle(name), chassis, winding),
        resistor(`${name} insulation`, middle(name), chassis, open),
        bush,
      ];
    case "quasi-balanced":
      return [tip, loaded(name, cold, ohms), loaded(name, screen, open)];
    case "unbalanced":
      return connector === "XLR" ? [tip, loaded(name, cold, open), bush] : [tip, bush];
    case "unbalanced, ring tied to sleeve":
      return [tip, resistor(`${name} tie`, point(name, cold), point(name, screen), tie), bush];
  }
}

const middle = (name: string) => `${name} middle`;

/** Two legs in opposite polarity around a middle of their own: only their difference is fixed. */
function aroundMiddle({ name, connector, bus, level }: MonoOutput, ohms: Ohms): Circuit {
  const { hot, cold } = legsOf[connector];
  return [
    { ...driven(name, hot, ohms, { [bus]: 1 }, level), b: middle(name) },
    { ...driven(name, cold, ohms, { [bus]: -1 }, level), b: middle(name) },
  ];
}
