import type { Circuit, Node } from "#core/circuit/circuit.ts";
import { chassis } from "#core/parts/boxes.ts";
import { contactsAt } from "#core/parts/contacts-joined.ts";
import { point } from "#core/parts/part.ts";
import type { Contact } from "#core/parts/plugs.ts";
import { reachInto } from "#core/rig/reach.ts";
import { type BuiltRig, type Connection, socketOf } from "#core/rig/rig.ts";
import { stretchInto } from "#core/rig/stretch.ts";
import { type Content, carriedBy, sum } from "./content.ts";

/** A contact of a socket that the programme leaves by. */
export interface Start {
  readonly socket: string;
  readonly contact: Contact;
  readonly content: Content;
  /** The contacts where it arrives, by their index; none where it is lost or shorted. */
  readonly to: readonly number[];
}

/** A contact where the programme arrives. */
export interface Mouth {
  /** The socket and contact of a box; a driver of headphones has none. */
  readonly at?: { readonly socket: string; readonly contact: Contact };
  /** Which ears it feeds, left first, and whether it is what is taken away there. */
  readonly ears: readonly { readonly ear: number; readonly minus: boolean }[];
}

/** What wires alone join of an output and an input. */
export interface Wired {
  readonly starts: readonly Start[];
  readonly mouths: readonly Mouth[];
}

/** Through a wire, however long; and through a spring or a cord of headphones, but not through a driver. */
const below = { wires: 100, boxes: 3 } as const;

/**
 * Which contacts that send the programme are joined, by metal, to those that take it in. A jack also sends what the normal of an empty one
 * brings it.
 */
export function wiredInto(rig: BuiltRig, into: string): Wired {
  const { from, ends, wires } = reachInto(rig, into);
  const root = joined(stretchInto(rig, into, []).circuit, wires);
  const returns = [from, into].map((id) => root(`${id}: ${chassis}`));
  const mouths = mouthsOf(rig, into, ends, root);
  const roots = mouths.map(({ node }) => root(node));
  const used = ends.filter((end) => end.into === from).map(({ socket }) => socket);
  const sent = rig
    .part(from)
    .sockets.filter(({ side }) => side === "out")
    .flatMap((socket) =>
      carriedBy(rig.part(from), socket).map((one) => ({
        socket: socket.name,
        ...one,
        root: root(`${from}: ${point(socket.name, one.contact)}`),
      })),
    );
  const byNormals = (net: Node): readonly Content[] =>
    sent
      .filter((one) => one.root === net && !used.includes(one.socket))
      .map(({ content }) => content);
  const starts = sent
    .filter(({ socket }) => used.includes(socket))
    .map(({ socket, contact, content, root: net }) => ({
      socket,
      contact,
      content: sum([content, ...byNormals(net)]),
      to: returns.includes(net) ? [] : indexesOf(roots, net),
    }));
  return { starts, mouths: mouths.map(({ node: _, ...mouth }) => mouth) };
}

const indexesOf = (all: readonly Node[], one: Node): readonly number[] =>
  all.flatMap((root, index) => (root === one ? [index] : []));

/** The contacts where a part takes something in; one that nothing is plugged in, by the contact that a normal joins it to. */
function mouthsOf(
  rig: BuiltRig,
  into: string,
  ends: readonly Connection[],
  root: (node: Node) => Node,
): readonly (Mouth & { readonly node: Node })[] {
  const { takes, plugs } = rig.part(into);
  const contacts = contactsInto(rig, into, ends);
  const mouthOf = (node: Node): Node =>
    contacts.find((one) => one.node === node)?.node ??
    contacts.find((one) => root(one.node) === root(node))?.node ??
    node;
  const taken = takes.flatMap(({ plus, minus }, ear) => [
    { node: mouthOf(`${into}: ${plus}`), ear, minus: false },
    ...(plugs.length > 0 || minus === chassis
      ? []
      : [{ node: mouthOf(`${into}: ${minus}`), ear, minus: true }]),
  ]);
  return [...new Set(taken.map(({ node }) => node))].map((node) => {
    const at = contacts.find((one) => one.node === node);
    return {
      node,
      ears: taken
        .filter((one) => one.node === node)
        .flatMap(({ ear, minus }) => earsOf(takes.length, ear).map((one) => ({ ear: one, minus }))),
      ...(at === undefined ? {} : { at: { socket: at.socket, contact: at.contact } }),
    };
  });
}

/** A box with one input sends it to both ears. */
const earsOf = (takes: number, ear: number): readonly number[] => (takes === 1 ? [0, 1] : [ear]);

const contactsInto = (rig: BuiltRig, into: string, ends: readonly Connection[]) =>
  ends
    .filter((end) => end.into === into)
    .flatMap(({ socket }) =>
      contactsAt({ plugs: [], sockets: [socketOf(rig.part(into), socket)] }).map(({ contact }) => ({
        node: `${into}: ${point(socket, contact)}`,
        socket,
        contact,
      })),
    );

/** For every node, the one that stands for all that metal joins to it. */
function joined(circuit: Circuit, wires: readonly string[]): (node: Node) => Node {
  const above = new Map<Node, Node>();
  const root = (node: Node): Node => {
    const next = above.get(node);
    return next === undefined ? node : root(next);
  };
  for (const element of circuit) {
    if (element.kind !== "resistor") continue;
    const wire = wires.some((id) => element.name.startsWith(`${id}: `));
    if (element.ohms >= (wire ? below.wires : below.boxes)) continue;
    const [a, b] = [root(element.a), root(element.b)];
    if (a !== b) above.set(a, b);
  }
  return root;
}
