import type { Circuit, Element } from "#core/circuit/circuit.ts";
import type { Part } from "#core/parts/part.ts";
import { type BuiltPart, type BuiltRig, build, type Rig } from "#core/rig/rig.ts";
import { type RigFault, rigFaults } from "#core/rig/rig-faults.ts";
import type { Ohms } from "#core/units/units.ts";

/** Other parts than the catalogue's in places of a rig, by the place's name. */
export type Changes = Readonly<Record<string, (part: Part) => Part>>;

/** A rig of real parts, some of them with other values. Throws where the rig has no such part. */
export function changedRig(rig: Rig, changes: Changes): BuiltRig {
  const built = build(rig);
  const changed = new Map(
    Object.entries(changes).map(([id, change]): [string, BuiltPart] => [
      id,
      { ...built.part(id), ...change(built.part(id)) },
    ]),
  );
  return { ...built, part: (id) => changed.get(id) ?? built.part(id) };
}

/** The part with other ohms in its elements of these names. Throws on a name that no element bears. */
export const withOhms =
  (ohms: Readonly<Record<string, Ohms>>) =>
  (part: Part): Part => {
    const missing = new Set(Object.keys(ohms));
    const change = (circuit: Circuit): Element[] =>
      circuit.map((element) => {
        const value = ohms[element.name];
        if (value === undefined || element.kind === "capacitor") return element;
        missing.delete(element.name);
        return { ...element, ohms: value };
      });
    const changed = {
      ...part,
      body: change(part.body),
      sockets: part.sockets.map((socket) => ({ ...socket, circuit: change(socket.circuit) })),
    };
    if (missing.size > 0) throw new Error(`the part has no element ${[...missing]}`);
    return changed;
  };

/** The part on earth by this instead of by what it has. */
export const onEarthBy =
  (way: Element | Circuit) =>
  (part: Part): Part => ({
    ...part,
    body: [
      ...part.body.filter(({ name }) => !/^(mains|mains earth|supply|battery)$/.test(name)),
      ...[way].flat(),
    ],
  });

/** One change after another. */
export const both =
  (first: (part: Part) => Part, then: (part: Part) => Part) =>
  (part: Part): Part =>
    then(first(part));

/** The one fault of a rig whose id is `part / at / name`. Throws where there is none. */
export function faultOf(rig: BuiltRig, id: string): RigFault {
  const fault = rigFaults(rig).find((one) => one.id === id);
  if (fault === undefined) throw new Error(`the rig cannot have the fault ${id}`);
  return fault;
}
