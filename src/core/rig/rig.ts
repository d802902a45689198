import { catalogue, type PartSettings } from "#core/parts/catalogue.ts";
import type { Part, PartKind, Plug, Socket } from "#core/parts/part.ts";

export interface RigPart {
  readonly id: string;
  readonly kind: PartKind;
  readonly settings?: PartSettings;
}

/** Which plug is in which socket. */
export interface Connection {
  readonly part: string;
  readonly plug: string;
  readonly into: string;
  readonly socket: string;
}

/** A place where somebody listens. */
export interface Position {
  readonly id: string;
  readonly name: string;
  /** The headphones there, a part of the rig. */
  readonly wears: string;
}

/** A rig as drawn: parts and which end is in which socket. Plain data, as it stands in the log. */
export interface Rig {
  readonly name: string;
  readonly parts: readonly RigPart[];
  readonly plugged: readonly Connection[];
  readonly positions: readonly Position[];
}

/** A rig with its parts looked up, so that nothing is built twice. */
export interface BuiltRig extends Rig {
  readonly part: (id: string) => Part;
}

/** Who listens at a position, as a part with faults of its own. */
export const listenerOf = (position: string): string => `${position}: listener`;
export const operatorId = "operator";

/** Looks up every part, and adds the people: one listener a position, one operator. Throws on a name that no part bears. */
export function build(rig: Rig): BuiltRig {
  const people: readonly RigPart[] = [
    { id: operatorId, kind: "operator" },
    ...rig.positions.map(({ id }): RigPart => ({ id: listenerOf(id), kind: "listener" })),
  ];
  const parts = [...rig.parts, ...people];
  const built = new Map(
    parts.map(({ id, kind, settings = {} }) => [id, catalogue[kind](settings)]),
  );
  const part = (id: string): Part => {
    const found = built.get(id);
    if (found === undefined) throw new Error(`the rig has no part named ${id}`);
    return found;
  };
  return { ...rig, parts, part };
}

/** The socket of a part by name. Throws where there is none. */
export function socketOf(part: Part, name: string): Socket {
  const socket = part.sockets.find((one) => one.name === name);
  if (socket === undefined) throw new Error(`a ${part.kind} has no socket named ${name}`);
  return socket;
}

/** The plug of a part by name. Throws where there is none. */
export function plugOf(part: Part, name: string): Plug {
  const plug = part.plugs.find((one) => one.name === name);
  if (plug === undefined) throw new Error(`a ${part.kind} has no plug named ${name}`);
  return plug;
}
