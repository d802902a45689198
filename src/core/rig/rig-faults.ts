import type { FaultName } from "#core/parts/fault-names.ts";
import type { Edit, Fault, Socket } from "#core/parts/part.ts";
import type { Depth } from "#core/parts/plugs.ts";
import { stepsOut } from "#core/parts/touching.ts";
import { type BuiltRig, type Connection, plugOf, socketOf } from "./rig.ts";

/** A fault of one part of this rig. */
export interface RigFault extends Fault {
  readonly id: string;
  readonly part: string;
  /** Where a hand or an eye goes: the part, or one socket of a box with many. */
  readonly place: string;
}

const depthFault: Readonly<Record<Exclude<Depth, "home">, { name: FaultName; weight: number }>> = {
  "return spring off": { name: "not home, return off", weight: 12 },
  "ring spring on the insulator": { name: "not home, ring on the insulator", weight: 20 },
  "both springs on the tip": { name: "not home, both on the tip", weight: 15 },
  "first click": { name: "not home, first click", weight: 15 },
  "sleeve spring on the ring": { name: "not home, sleeve on the ring", weight: 8 },
};

/** Every fault the rig can have, each part's own and those of its connections. Odds: common practice, no source. */
export function rigFaults(rig: BuiltRig): readonly RigFault[] {
  const own = rig.parts.flatMap(({ id }) =>
    rig
      .part(id)
      .faults.filter((fault) => !atIdleOutput(rig, id, fault))
      .map((fault) => named(id, fault, rig.part(id).sockets)),
  );
  const good = new Set(rig.parts.flatMap((part) => (part.good ? [part.id] : [])));
  const joins = rig.plugged
    .filter(({ part, sure }) => !good.has(part) && !sure)
    .flatMap((connection) =>
      connectionFaults(rig, connection).map((fault) => named(connection.part, fault)),
    );
  return [...own, ...joins, ...exchanges(rig).filter(({ part }) => !good.has(part))];
}

/** What is wrong at an output that nothing stands in concerns nobody. */
const atIdleOutput = (rig: BuiltRig, id: string, { at }: Fault): boolean =>
  rig.part(id).sockets.some(({ name, side }) => name === at && side === "out") &&
  !rig.plugged.some(({ into, socket }) => into === id && socket === at);

const named = (part: string, fault: Fault, sockets: readonly Socket[] = []): RigFault => ({
  ...fault,
  part,
  place: sockets.some(({ name }) => name === fault.at) ? `${part}, ${fault.at}` : part,
  id: `${part} / ${fault.at} / ${fault.name}${fault.comesAndGoes ? ", now and then" : ""}`,
});

/** Not home, and in the wrong socket. They belong to the part the plug hangs from. */
function connectionFaults(rig: BuiltRig, { part, plug, into, socket }: Connection): Fault[] {
  const where = socketOf(rig.part(into), socket);
  const base = { at: plug, seen: true } as const;
  const depths = stepsOut(plugOf(rig.part(part), plug).kind, where.kind).map((depth): Fault => {
    if (depth === "home") throw new Error("home is no step out");
    const { name, weight } = depthFault[depth];
    const edits: Edit[] = [{ edit: "depth", plug, depth }];
    return { ...base, name, weight, edits, slot: `${plug} depth`, repair: 5 };
  });
  const taken = (other: string) =>
    rig.plugged.some((one) => one.into === into && one.socket === other);
  const wrong = Object.entries(where.mistakenFor ?? {})
    .filter(([other]) => !taken(other))
    .map(
      ([other, weight]): Fault => ({
        ...base,
        name: "wrong socket",
        at: `${plug} in ${other}`,
        weight,
        edits: [{ edit: "socket", plug, socket: other }],
        slot: "sockets",
        repair: 10,
      }),
    );
  return [...depths, ...wrong];
}

/** Two plugs of one lead in a pair of sockets, each in the other's. */
function exchanges(rig: BuiltRig): RigFault[] {
  return rig.plugged.flatMap(({ part, plug, into, socket, sure }) => {
    if (sure) return [];
    const partner = socketOf(rig.part(into), socket).partner;
    const other = rig.plugged.find((one) => one.into === into && one.socket === partner);
    if (other?.part !== part || partner === undefined || socket > partner) return [];
    const edits: Edit[] = [
      { edit: "socket", plug, socket: partner },
      { edit: "socket", plug: other.plug, socket },
    ];
    return [
      named(part, {
        name: "sides exchanged",
        at: "plugs",
        edits,
        weight: 60,
        slot: "sockets",
        seen: true,
        repair: 10,
      }),
    ];
  });
}
