import type { Circuit, Node } from "#core/circuit/circuit.ts";
import { open } from "#core/circuit/circuit.ts";
import type { Ohms } from "#core/units/units.ts";
import { capacitor, resistor } from "./boxes.ts";
import { contactsAt } from "./contacts-joined.ts";
import type { Fault, Part, Plug, Socket } from "./part.ts";
import { point } from "./part.ts";
import type { Contact, JackSize, PlugKind, SocketKind } from "./plugs.ts";
import { type PinOrder, slipsOf } from "./slips.ts";
import { type Run, runFarads, runOhms } from "./wire.ts";
import { type End, endFaults, type WireOdds } from "./wire-faults.ts";

/** A plug, or where `socket` says so, an in-line socket with the springs of that kind of plug. */
export interface LeadEnd {
  readonly name: string;
  readonly kind: PlugKind;
  /** Of a jack; 6.35 mm where it is left out. */
  readonly size?: JackSize;
  readonly socket?: SocketKind;
  /** Sockets of this lead that a hurried hand takes for this one, with odds in 10,000. */
  readonly mistakenFor?: Readonly<Record<string, number>>;
}

/** A conductor: two nodes, and how much of the lead's length it is, all of it where it is left out. */
export type LeadWire = readonly [name: string, from: Node, to: Node, share?: number];

/** Two conductors with capacitance between them, and along how much of the length. */
export type Cores = readonly [a: Node, b: Node, share?: number];

/** An end where things go wrong, where that is said to be, and how often. */
interface Weak {
  readonly at: string;
  readonly end: string;
  readonly odds: WireOdds;
  /** Of an end with four contacts. */
  readonly order?: PinOrder;
}

/** A lead, adapter or splitter as data: its ends, what is soldered to what, and where it goes wrong. */
export interface Shape {
  readonly ends: readonly LeadEnd[];
  readonly wires: readonly LeadWire[];
  readonly cores?: readonly Cores[];
  /** Resistors inside: a wheel's tracks, a splitter's series resistors. */
  readonly inside?: Circuit;
  readonly weak: readonly Weak[];
  /** Faults that no end has by itself. */
  readonly more?: readonly Fault[];
}

/** A lead of this shape, made of this cable. Contacts that nothing is soldered to are left in the plastic: 1 GΩ. */
export function leadOf(shape: Shape, run: Run): Part {
  const { ends, more = [] } = shape;
  const plugs = ends.flatMap((end) => (end.socket === undefined ? [plugOf(end)] : []));
  const sockets = ends.flatMap((end) =>
    end.socket === undefined ? [] : [socketOf(end, end.socket)],
  );
  const wired = { plugs, sockets, body: bodyOf(shape, run) };
  const body = [...wired.body, ...unused(wired)];
  const slips = shape.weak.flatMap((weak) => endFaults(endOf(shape, weak, run), weak.odds));
  const changes = resoldered({ plugs, sockets, body }, run);
  return {
    plugs,
    sockets,
    body,
    takes: [],
    controls: {},
    faults: [...onceEach(slips).filter(changes), ...more],
    look: 15,
  };
}

const sized = ({ size }: LeadEnd) => (size === undefined ? {} : { size });
const plugOf = (end: LeadEnd): Plug => ({ name: end.name, kind: end.kind, ...sized(end) });
const socketOf = (end: LeadEnd, kind: SocketKind): Socket => ({
  name: end.name,
  kind,
  ...sized(end),
  side: "through",
  circuit: [],
  ...(end.mistakenFor === undefined ? {} : { mistakenFor: end.mistakenFor }),
});

const bodyOf = ({ wires, cores = [], inside = [] }: Shape, run: Run): Circuit => [
  ...wires.map(([name, from, to, share = 1]) => resistor(name, from, to, runOhms(run, share))),
  ...cores.map(([a, b, share = 1], index) =>
    capacitor(index === 0 ? "cores" : `cores ${index + 1}`, a, b, share * runFarads(run)),
  ),
  ...inside,
];

/** What holds a bare contact in its place, to the return beside it. */
function unused({ plugs, sockets, body }: Pick<Part, "plugs" | "sockets" | "body">): Circuit {
  const nodes = new Set(body.flatMap(({ a, b }) => [a, b]));
  return contactsAt({ plugs, sockets }).flatMap(({ at, contact }) => {
    const beside = (["sleeve", "pin 1", "ring 2"] as const).map((one) => point(at, one));
    const to = beside.find((node) => nodes.has(node));
    const bare = point(at, contact);
    return to === undefined || nodes.has(bare)
      ? []
      : [resistor(`${at} ${contact} unused`, bare, to, open)];
  });
}

/** An end as its plug and the wires make it. */
function endOf({ ends, wires }: Shape, { at, end, order }: Weak, run: Run): End {
  const kind = ends.find(({ name }) => name === end)?.kind;
  if (kind === undefined) throw new Error(`a lead has no end named ${end}`);
  const node = (contact: Contact) => point(end, contact);
  return {
    at,
    slips: slipsOf(kind, order),
    node,
    soldered: (contact) =>
      wires.flatMap(([element, from, to, share]) => {
        const touch = { element, ohms: runOhms(run, share) };
        return [
          ...(from === node(contact) ? [{ ...touch, side: "a" } as const] : []),
          ...(to === node(contact) ? [{ ...touch, side: "b" } as const] : []),
        ];
      }),
  };
}

/** A wire that breaks is broken at both of its ends: the first one named has the fault. */
const onceEach = (faults: readonly Fault[]): readonly Fault[] =>
  faults.filter(
    ({ edits }, index) =>
      faults.findIndex((one) => JSON.stringify(one.edits) === JSON.stringify(edits)) === index,
  );

/**
 * Tells solder in the wrong place that leaves everything joined as it was, as two tips of one signal exchanged do, from what does not.
 */
function resoldered(part: Pick<Part, "plugs" | "sockets" | "body">, run: Run) {
  const nodes = contactsAt(part).map(({ at, contact }) => point(at, contact));
  const below = 1 + 4 * runOhms(run);
  const healthy = joinedAs(nodes, part.body, below);
  return ({ edits }: Fault): boolean =>
    edits.some(({ edit }) => edit === "ohms") ||
    joinedAs(nodes, changed(part.body, edits), below) !== healthy;
}

/** Nodes by what joins them: for each, the first of the list that wires of less than so many ohms reach. */
function joinedAs(nodes: readonly Node[], body: Circuit, below: Ohms): string {
  const root = new Map<Node, Node>();
  const rootOf = (node: Node): Node => {
    const above = root.get(node);
    return above === undefined ? node : rootOf(above);
  };
  for (const element of body) {
    if (element.kind !== "resistor" || element.ohms >= below) continue;
    const [a, b] = [rootOf(element.a), rootOf(element.b)];
    if (a !== b) root.set(a, b);
  }
  const roots = nodes.map(rootOf);
  return roots.map((one) => roots.indexOf(one)).join();
}

/** A body after the edits that move its elements or join its nodes. */
const changed = (body: Circuit, edits: Fault["edits"]): Circuit => [
  ...body.map((element) => {
    const moved = edits.find((edit) => edit.edit === "rewire" && edit.element === element.name);
    return moved?.edit === "rewire"
      ? { ...element, a: moved.a ?? element.a, b: moved.b ?? element.b }
      : element;
  }),
  ...edits.flatMap((edit) =>
    edit.edit === "bridge" ? [resistor("bridge", edit.a, edit.b, edit.ohms)] : [],
  ),
];
