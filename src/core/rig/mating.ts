import { type Circuit, earth, open } from "#core/circuit/circuit.ts";
import { resistor } from "#core/parts/boxes.ts";
import { point } from "#core/parts/part.ts";
import { type Contact, contactsOf, type Depth, type PlugKind } from "#core/parts/plugs.ts";
import { touching } from "#core/parts/touching.ts";
import type { Ohms } from "#core/units/units.ts";
import { joined } from "./placed.ts";
import { type BuiltRig, type Connection, plugOf, socketOf } from "./rig.ts";
import type { RigFault } from "./rig-faults.ts";

/** A spring against a plug. Handbook, section 5. */
const contactOhms: Ohms = 0.05;

/** The plugs in a rig as a fault set leaves them. */
export function plugged(
  connections: readonly Connection[],
  faults: readonly RigFault[],
): readonly Connection[] {
  return connections.map((connection) => {
    const moved = editsOf(connection, faults).find(
      (edit) => edit.edit === "socket" && edit.plug === connection.plug,
    );
    return moved?.edit === "socket" ? { ...connection, socket: moved.socket } : connection;
  });
}

const editsOf = ({ part }: Connection, faults: readonly RigFault[]) =>
  faults.filter((fault) => fault.part === part).flatMap(({ edits }) => edits);

/** Springs on contacts; a contact that nothing touches hangs in the air. */
export function mating(rig: BuiltRig, end: Connection, faults: readonly RigFault[]): Circuit {
  const plug = plugOf(rig.part(end.part), end.plug);
  const [kind, depth] = stateOf(plug.kind, end, faults);
  const pairs = touching(kind, socketOf(rig.part(end.into), end.socket).kind, depth);
  const air = contactsOf(plug.kind).filter((contact) =>
    pairs.every(([, touched]) => touched !== contact),
  );
  const on = (contact: Contact) => joined(end.part, point(end.plug, contact));
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
    ...inTheAir(end.part, end.plug, air),
  ];
}

/** Contacts of a plug that nothing touches. */
export const inTheAir = (part: string, plug: string, untouched: readonly Contact[]): Circuit =>
  untouched.map((contact) =>
    resistor(
      `${part}: ${plug}, ${contact} in the air`,
      joined(part, point(plug, contact)),
      earth,
      open,
    ),
  );

function stateOf(
  healthy: PlugKind,
  end: Connection,
  faults: readonly RigFault[],
): readonly [PlugKind, Depth] {
  const edits = editsOf(end, faults);
  const depth = edits.find((edit) => edit.edit === "depth" && edit.plug === end.plug);
  const kind = edits.find((edit) => edit.edit === "plug" && edit.plug === end.plug);
  return [
    kind?.edit === "plug" ? kind.kind : healthy,
    depth?.edit === "depth" ? depth.depth : "home",
  ];
}
