import { type Circuit, earth, type Node } from "#core/circuit/circuit.ts";
import { solve, type Voltages } from "#core/circuit/solve.ts";
import { resistor } from "#core/parts/boxes.ts";
import { contactsAt } from "#core/parts/contacts-joined.ts";
import { point } from "#core/parts/part.ts";
import { contactsOf } from "#core/parts/plugs.ts";
import { edited } from "#core/rig/edited.ts";
import { joined, placed } from "#core/rig/placed.ts";
import { type BuiltRig, plugOf } from "#core/rig/rig.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import { subtract } from "#core/units/complex.ts";
import type { Ohms } from "#core/units/units.ts";

/** What a meter would read between two nodes of a part that is unplugged at all of its ends. */
export type Between = (from: Node, to: Node) => Ohms;

/** A meter on one part: what it can be put to, and what it reads under some of the part's faults. */
export interface Meter {
  /** Every contact of the part, and its other nodes. */
  readonly nodes: ReadonlySet<Node>;
  readonly under: (faults: readonly RigFault[]) => Between;
}

const known = new WeakMap<BuiltRig, Map<string, Meter>>();

/** The meter on a part of a rig; whatever it read once is remembered. None where the rig has no such part. */
export function meterOn(rig: BuiltRig, part: string): Meter | undefined {
  if (!rig.parts.some(({ id }) => id === part)) return undefined;
  const meters = known.get(rig) ?? new Map<string, Meter>();
  known.set(rig, meters);
  const meter = meters.get(part) ?? newlyOn(rig, part);
  meters.set(part, meter);
  return meter;
}

function newlyOn(rig: BuiltRig, part: string): Meter {
  const body = placed(part, rig.part(part).body);
  const places = contactsAt(rig.part(part)).map(({ at, contact }) =>
    joined(part, point(at, contact)),
  );
  const under = new Map<string, Between>();
  return {
    nodes: new Set(body.flatMap(({ a, b }) => [a, b])),
    under: (faults) => {
      const key = faults.map(({ id }) => id).join("\n");
      const made =
        under.get(key) ?? between([...edited(body, faults), ...shorn(rig, faults)], places);
      under.set(key, made);
      return made;
    },
  };
}

/** Where a plug has fewer contacts than it should, a probe meets its sleeve where the missing one would be. */
const shorn = (rig: BuiltRig, faults: readonly RigFault[]): Circuit =>
  faults.flatMap(({ part, edits }) =>
    edits.flatMap((edit) => {
      if (edit.edit !== "plug") return [];
      const there = contactsOf(edit.kind);
      return contactsOf(plugOf(rig.part(part), edit.plug).kind)
        .filter((contact) => !there.includes(contact))
        .map((contact) =>
          resistor(
            `${edit.plug} ${contact} missing`,
            joined(part, point(edit.plug, contact)),
            joined(part, point(edit.plug, "sleeve")),
            tiny,
          ),
        );
    }),
  );

const tiny: Ohms = 1e-3;
/** Between a circuit that stands alone and the earth that its voltages are measured against. */
const nearlyNothing: Ohms = 1e12;
/** A source so far away that it drives one ampere whatever it meets. */
const far: Ohms = 1e9;

/**
 * The resistance between any two nodes: one ampere is sent into each contact by itself, and the voltages are read off. Nodes that are no
 * contacts are worked out when they are asked for.
 */
function between(circuit: Circuit, contacts: readonly Node[]): Between {
  const held = [...new Set(circuit.flatMap(({ a, b }) => [a, b]))].map((node) =>
    resistor(`${node} held`, node, earth, nearlyNothing),
  );
  const reading = (places: readonly Node[]) => {
    const sources: Circuit = places.map((node) => ({
      kind: "source",
      name: node,
      a: node,
      b: earth,
      ohms: far,
      drive: { [node]: far },
    }));
    const volts = solve([...circuit, ...held, ...sources], 0, places);
    return new Map(places.map((node, at) => [node, volts[at] as Voltages]));
  };
  const all = reading(contacts.filter((node) => held.some(({ a }) => a === node)));
  return (from, to) => {
    const read = all.has(from) && all.has(to) ? all : reading([from, to]);
    const [one, other] = [read.get(from), read.get(to)];
    if (one === undefined || other === undefined) throw new Error(`no meter reaches ${from}`);
    return Math.max(0, subtract(one(from), one(to)).re + subtract(other(to), other(from)).re);
  };
}
