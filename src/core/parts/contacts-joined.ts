import type { Circuit, Node } from "#core/circuit/circuit.ts";
import type { Ohms } from "#core/units/units.ts";
import { type Part, point } from "./part.ts";
import { type Contact, contactsOf, type PlugKind, type SocketKind } from "./plugs.ts";

/** A contact of a plug, or a spring or pin of a socket. */
export interface PartContact {
  /** The plug or socket. */
  readonly at: string;
  readonly contact: Contact;
}

/** A contact that another one reaches, and through how much. */
interface Reached extends PartContact {
  readonly ohms: Ohms;
}

/** A contact, and the contacts at the part's other ends that it reaches. */
export interface Joined extends PartContact {
  readonly to: readonly Reached[];
}

/** What `contactsJoined` reads of a part. */
export type Wiring = Pick<Part, "plugs" | "sockets" | "body" | "normals">;

/** A plug with the contacts that go where a socket's springs are. */
const springsAs: Readonly<Record<SocketKind, PlugKind>> = {
  TS: "TS",
  TRS: "TRS",
  "TRS with a deep spring": "TRS",
  "four-pole, common on ring 2": "TRRS",
  "four-pole, common on sleeve": "TRRS",
  XLR: "XLR",
  RCA: "RCA",
  link: "link",
};

/** Every contact of a part, its plugs' first. */
export const contactsAt = ({ plugs, sockets }: Pick<Part, "plugs" | "sockets">): PartContact[] =>
  [
    ...plugs.map(({ name, kind }) => ({ name, kind })),
    ...sockets.map(({ name, kind }) => ({ name, kind: springsAs[kind] })),
  ].flatMap(({ name, kind }) => contactsOf(kind).map((contact) => ({ at: name, contact })));

/**
 * How a passive part is wired, read from its circuit: for every contact, those at its other ends that it reaches through resistors of less
 * than `below` ohms together, by the shortest way. `used` names the sockets that something stands in: they break the part's normals.
 */
export function contactsJoined(
  part: Wiring,
  below: Ohms = 1,
  used: readonly string[] = [],
): readonly Joined[] {
  const all = contactsAt(part);
  const circuit = circuitOf(part, used);
  return all.map(({ at, contact }) => {
    const ohms = ohmsFrom(circuit, point(at, contact), below);
    const to = all
      .filter((other) => other.at !== at)
      .map((other) => ({ ...other, ohms: ohms.get(point(other.at, other.contact)) ?? below }))
      .filter((other) => other.ohms < below);
    return { at, contact, to };
  });
}

const circuitOf = ({ body, sockets, normals = [] }: Wiring, used: readonly string[]): Circuit => [
  ...body,
  ...sockets.flatMap(({ circuit }) => circuit),
  ...normals.flatMap(({ whileEmpty, circuit }) =>
    whileEmpty.some((socket) => used.includes(socket)) ? [] : circuit,
  ),
];

/** Every node within reach of one, by the least sum of ohms on the way. */
function ohmsFrom(circuit: Circuit, start: Node, below: Ohms): ReadonlyMap<Node, Ohms> {
  const wires = circuit.flatMap((one) => (one.kind === "resistor" ? [one] : []));
  const best = new Map<Node, Ohms>([[start, 0]]);
  const nearer = (to: Node, ohms: Ohms): boolean => {
    if (ohms >= Math.min(below, best.get(to) ?? below)) return false;
    best.set(to, ohms);
    return true;
  };
  for (let changed = true; changed; ) {
    changed = false;
    for (const { a, b, ohms } of wires)
      for (const [from, to] of [
        [a, b],
        [b, a],
      ] as const)
        changed = nearer(to, (best.get(from) ?? below) + ohms) || changed;
  }
  return best;
}
