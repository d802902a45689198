import type { Circuit, Node } from "#core/circuit/circuit.ts";
import type { Ohms, Seconds } from "#core/units/units.ts";
import type { FaultName } from "./fault-names.ts";
import type { Contact, Depth, PlugKind, SocketKind } from "./plugs.ts";

export const partKinds = [
  "laptop",
  "mixer",
  "TRS lead",
  "TS lead",
  "insert Y",
  "one-to-both lead",
  "headphone amplifier",
  "headphones",
  "listener",
  "operator",
] as const;
export type PartKind = (typeof partKinds)[number];

/** What a fault changes. Names are the part's own; the rig puts the part's name before them. */
export type Edit =
  | { readonly edit: "ohms"; readonly element: string; readonly ohms: Ohms }
  | { readonly edit: "bridge"; readonly a: Node; readonly b: Node; readonly ohms: Ohms }
  | { readonly edit: "rewire"; readonly element: string; readonly a?: Node; readonly b?: Node }
  | { readonly edit: "control"; readonly control: string; readonly value: number }
  | { readonly edit: "depth"; readonly plug: string; readonly depth: Depth }
  | { readonly edit: "plug"; readonly plug: string; readonly kind: PlugKind }
  /** The plug stands in another socket of the part it belongs in. */
  | { readonly edit: "socket"; readonly plug: string; readonly socket: string };

export interface Fault {
  readonly name: FaultName;
  /** The plug or socket it sits at, 'settings' for knobs and switches, 'body' for the rest. */
  readonly at: string;
  readonly edits: readonly Edit[];
  /** Odds, in 10,000 rigs, that it is there. */
  readonly weight: number;
  /** Two faults of one slot cannot both be there: one plug has one depth. */
  readonly slot: string;
  /** A look shows it. */
  readonly seen: boolean;
  /** Seconds to put right, once known. */
  readonly repair: Seconds;
}

export interface Plug {
  readonly name: string;
  readonly kind: PlugKind;
}

export interface Socket {
  readonly name: string;
  readonly kind: SocketKind;
  readonly side: "in" | "out";
  /** From its springs inwards; springs are nodes named `socket.tip` and so on. */
  readonly circuit: Circuit;
  /** Sockets of this part that a hurried hand takes for this one, with odds in 10,000. */
  readonly mistakenFor?: Readonly<Record<string, number>>;
  /** The other one of a pair marked left and right. */
  readonly partner?: string;
}

/** A voltage that a part takes in, of `plus` over `minus`. */
export interface Probe {
  readonly plus: Node;
  readonly minus: Node;
}

/** The gain from every signal taken in to a signal inside, by that signal's name. */
export type Buses = Readonly<Record<string, readonly number[]>>;

export interface Part {
  readonly kind: PartKind;
  readonly plugs: readonly Plug[];
  readonly sockets: readonly Socket[];
  /** What is there whichever socket is used: wires, drivers, a chassis and its way to earth. */
  readonly body: Circuit;
  /** What it takes in: an input's sides, or a headphone's drivers, left first. */
  readonly takes: readonly Probe[];
  readonly controls: Readonly<Record<string, number>>;
  /** From what it takes in to the signals its sockets send. A part without amplifiers has none. */
  readonly through?: (control: (name: string) => number) => Buses;
  readonly faults: readonly Fault[];
  /** Seconds for a look at it: its switches, its plugs, how it is worn. */
  readonly look: Seconds;
}

/** A plug's or socket's node. */
export const point = (at: string, contact: Contact): Node => `${at}.${contact}`;
