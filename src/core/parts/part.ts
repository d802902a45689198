import type { Circuit, Node } from "#core/circuit/circuit.ts";
import type { Complex } from "#core/units/complex.ts";
import type { Hertz, Ohms, Seconds } from "#core/units/units.ts";
import type { FaultName } from "./fault-names.ts";
import type { Contact, Depth, JackSize, PlugKind, SocketKind } from "./plugs.ts";

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
  /** A contact that makes and breaks: there at each hearing with even odds. */
  readonly comesAndGoes?: true;
  /** Plugging out and in again clears it about half of the time. */
  readonly cleans?: true;
}

export interface Plug {
  readonly name: string;
  readonly kind: PlugKind;
  /** Of a jack; 6.35 mm where it is left out. */
  readonly size?: JackSize;
}

/** What hangs on a socket's level or on who else uses it: said when one is chosen. */
const ties = [
  "main fader",
  "monitor knob",
  "headphone knob",
  "send knob",
  "solo takes it over",
  "own mix",
  "hiss past half",
  "another device chosen",
] as const;
export type Tie = (typeof ties)[number];

export interface Socket {
  readonly name: string;
  readonly kind: SocketKind;
  /** Of a jack; 6.35 mm where it is left out. */
  readonly size?: JackSize;
  /** Takes programme in, sends it out, or is joined to the part's other ends by wires alone. */
  readonly side: "in" | "out" | "through";
  /** From its springs inwards; springs are nodes named `socket.tip` and so on. */
  readonly circuit: Circuit;
  /** Sockets of this part that a hurried hand takes for this one, with odds in 10,000. */
  readonly mistakenFor?: Readonly<Record<string, number>>;
  /** The other one of a pair marked left and right. */
  readonly partner?: string;
  /** What its level hangs on. */
  readonly ties?: readonly Tie[];
  /** Plugged into it, headphones or a lead can do harm: said before anything else. */
  readonly harms?: "loudspeaker output" | "phantom power" | "balanced headphone output";
}

/** Elements that are there only while nothing is plugged into some sockets: the normal of a jack or a patchbay. */
export interface Normal {
  readonly whileEmpty: readonly string[];
  readonly circuit: Circuit;
}

/** A voltage that a part takes in, of `plus` over `minus`. */
export interface Probe {
  readonly plus: Node;
  readonly minus: Node;
}

/** A gain that is real, or has a phase at the frequency it was asked for. */
export type Gain = number | Complex;

/** The gain from every signal taken in to a signal inside, by that signal's name. */
export type Buses = Readonly<Record<string, readonly Gain[]>>;

/** How a control stands, by its name. */
export type Control = (name: string) => number;

export interface Part {
  readonly plugs: readonly Plug[];
  readonly sockets: readonly Socket[];
  /** What is there whichever socket is used: wires, drivers, a chassis and its way to earth. */
  readonly body: Circuit;
  readonly normals?: readonly Normal[];
  /** What it takes in: an input's sides, or a headphone's drivers, left first. */
  readonly takes: readonly Probe[];
  readonly controls: Readonly<Record<string, number>>;
  /**
   * From what it takes in to the signals its sockets send; of headphones, from the drivers to the ears, left first. A part without
   * amplifiers or anything acoustic to tell has none, and what it takes in is what is heard.
   */
  readonly through?: (control: Control, at: Hertz) => Buses;
  /** Seconds by which its right side comes later than its left. */
  readonly late?: (control: Control) => Seconds;
  readonly faults: readonly Fault[];
  /**
   * An instrument, which may stand at the end of a way as headphones do: what it takes in is measured, nobody wears it and nothing is asked by
   * ear. `tolerance` is how far its gains lie from the drawing, against the largest one.
   */
  readonly measures?: { readonly tolerance: number };
  /** It goes into an ear: it is exchanged with nobody's and never turned round (hygiene; common practice, no source). */
  readonly oneListener?: true;
  /** Seconds for a look at it: its switches, its plugs, how it is worn. */
  readonly look: Seconds;
}

/** A plug's or socket's node. */
export const point = (at: string, contact: Contact): Node => `${at}.${contact}`;
