import { type Circuit, type Element, earth, type Node, open } from "#core/circuit/circuit.ts";
import { resistor } from "#core/parts/boxes.ts";
import { type Edit, point } from "#core/parts/part.ts";
import { contacts, type Depth, type PlugKind, touching } from "#core/parts/plugs.ts";
import type { Ohms } from "#core/units/units.ts";
import { controlOf } from "./controls.ts";
import { type BuiltRig, type Connection, plugOf, socketOf } from "./rig.ts";
import type { RigFault } from "./rig-faults.ts";

/** A spring against a plug. Handbook, section 5. */
const contactOhms: Ohms = 0.05;

/** Everything between the outputs that feed a part and what that part takes in, solved as one circuit. */
export interface Stretch {
  /** The part whose outputs drive it. */
  readonly from: string;
  readonly circuit: Circuit;
}

const joined = (part: string, node: Node): Node => (node === earth ? earth : `${part}: ${node}`);

const placed = (part: string, element: Element): Element => ({
  ...element,
  name: joined(part, element.name),
  a: joined(part, element.a),
  b: joined(part, element.b),
});

/** The plugs in a rig as a fault set leaves them. */
export function plugged(rig: BuiltRig, faults: readonly RigFault[]): readonly Connection[] {
  return rig.plugged.map((connection) => {
    const moved = faults
      .filter(({ part }) => part === connection.part)
      .flatMap(({ edits }) => edits)
      .find((edit) => edit.edit === "socket" && edit.plug === connection.plug);
    return moved?.edit === "socket" ? { ...connection, socket: moved.socket } : connection;
  });
}

/** The leads that end in a part, or the part itself where it is a plug that hangs from it, as headphones do. */
export function cordsInto(rig: BuiltRig, part: string): readonly string[] {
  if (rig.part(part).plugs.length > 0) return [part];
  const inputs = rig
    .part(part)
    .sockets.filter(({ side }) => side === "in")
    .map(({ name }) => name);
  const ends = rig.plugged.filter(({ into, socket }) => into === part && inputs.includes(socket));
  return [...new Set(ends.map((end) => end.part))];
}

/** The circuit into a part, as a fault set leaves it. Throws where two boxes drive it, or none: no rig of ours has such. */
export function stretchInto(rig: BuiltRig, part: string, faults: readonly RigFault[]): Stretch {
  const cords = cordsInto(rig, part);
  const ends = plugged(rig, faults).filter((end) => cords.includes(end.part));
  const from = [...new Set(ends.map(({ into }) => into))].filter((into) => into !== part);
  const [source] = from;
  if (source === undefined || from.length > 1)
    throw new Error(`${part} is fed by ${from.length} parts, and must be by one`);
  const inputs = rig.part(part).sockets.filter(({ side }) => side === "in");
  const outputs = ends
    .filter(({ into }) => into === source)
    .map(({ socket }) => socketOf(rig.part(source), socket));
  const level = controlOf(rig, source, faults);
  const boxes = [
    ...inputs.flatMap(({ circuit }) => circuit.map((element) => placed(part, element))),
    ...outputs.flatMap(({ circuit }) =>
      circuit.map((element) => placed(source, turned(element, level))),
    ),
  ];
  const bodies = [...new Set([source, ...cords, part])].flatMap((id) =>
    rig.part(id).body.map((element) => placed(id, element)),
  );
  const mated = ends.flatMap((end) => mating(rig, end, faults));
  return { from: source, circuit: edited([...boxes, ...bodies, ...mated], faults) };
}

/** A source as its volume leaves it. */
function turned(element: Element, level: (name: string) => number): Element {
  if (element.kind !== "source" || element.level === undefined) return element;
  const by = level(element.level);
  const drive = Object.fromEntries(
    Object.entries(element.drive).map(([bus, gain]) => [bus, gain * by]),
  );
  return { ...element, drive };
}

/** Springs on contacts; a contact that nothing touches hangs in the air. */
function mating(rig: BuiltRig, end: Connection, faults: readonly RigFault[]): Element[] {
  const [kind, depth] = stateOf(rig, end, faults);
  const pairs = touching(kind, depth);
  const air = contacts.filter((contact) => pairs.every(([, touched]) => touched !== contact));
  const on = (contact: (typeof contacts)[number]) => joined(end.part, point(end.plug, contact));
  const name = `${end.part}: ${end.plug}`;
  return [
    ...pairs.map(([spring, contact]) =>
      resistor(
        `${name}, ${spring} spring on ${contact}`,
        joined(end.into, point(end.socket, spring)),
        on(contact),
        contactOhms,
      ),
    ),
    ...air.map((contact) => resistor(`${name}, ${contact} in the air`, on(contact), earth, open)),
  ];
}

function stateOf(
  rig: BuiltRig,
  end: Connection,
  faults: readonly RigFault[],
): readonly [PlugKind, Depth] {
  const edits = faults.filter(({ part }) => part === end.part).flatMap((fault) => fault.edits);
  const depth = edits.find((edit) => edit.edit === "depth" && edit.plug === end.plug);
  const kind = edits.find((edit) => edit.edit === "plug" && edit.plug === end.plug);
  return [
    kind?.edit === "plug" ? kind.kind : plugOf(rig.part(end.part), end.plug).kind,
    depth?.edit === "depth" ? depth.depth : "home",
  ];
}

/** The circuit after the edits that touch its elements, and the shorts among them. */
function edited(circuit: Circuit, faults: readonly RigFault[]): Circuit {
  const edits = faults.flatMap(({ part, edits, id }) => edits.map((edit) => ({ part, edit, id })));
  const elements = circuit.map((element) =>
    edits.reduce((sum, { part, edit }) => changed(sum, part, edit), element),
  );
  const bridges = edits.flatMap(({ part, edit, id }) =>
    edit.edit === "bridge"
      ? [resistor(id, joined(part, edit.a), joined(part, edit.b), edit.ohms)]
      : [],
  );
  return [...elements, ...bridges];
}

/** An element after one edit, if the edit is of it. */
function changed(element: Element, part: string, edit: Edit): Element {
  if (edit.edit !== "ohms" && edit.edit !== "rewire") return element;
  if (element.name !== joined(part, edit.element)) return element;
  if (edit.edit === "ohms") return withOhms(element, edit.ohms);
  const at = (node: Node | undefined, before: Node) =>
    node === undefined ? before : joined(part, node);
  return { ...element, a: at(edit.a, element.a), b: at(edit.b, element.b) };
}

function withOhms(element: Element, ohms: Ohms): Element {
  if (element.kind === "capacitor")
    throw new Error(`${element.name} is a capacitor and has no ohms`);
  return { ...element, ohms };
}
