import { fits } from "#core/parts/plugs.ts";
import type { BuiltRig, Connection } from "./rig.ts";
import type { PlugTrouble } from "./trouble.ts";

/** Whether a rig has this part: people are none. */
export const isPart = (rig: BuiltRig, id: string): boolean =>
  rig.parts.some((part) => part.id === id && rig.part(id).family !== "person");

/** What is amiss with one plug and its socket. Sizes are not asked: what is drawn without one may have an adapter on it. */
export function plugTroubles(rig: BuiltRig, index: number): readonly PlugTrouble[] {
  const end = rig.plugged[index];
  if (end === undefined) return [];
  for (const key of ["part", "into"] as const)
    if (!isPart(rig, end[key])) return [{ trouble: "no such part", index, end, key }];
  const { plugs } = rig.part(end.part);
  const { sockets } = rig.part(end.into);
  const plug = plugs.find(({ name }) => name === end.plug);
  const socket = sockets.find(({ name }) => name === end.socket);
  if (plug === undefined) return [{ trouble: "no such plug", index, end, has: namesOf(plugs) }];
  if (socket === undefined)
    return [{ trouble: "no such socket", index, end, has: namesOf(sockets) }];
  if (!fits({ kind: plug.kind }, { kind: socket.kind }))
    return [{ trouble: "does not fit", index, end, plug: plug.kind }];
  const key = usedTwice(end, rig.plugged.slice(0, index));
  return key === undefined ? [] : [{ trouble: "used twice", index, end, key }];
}

const namesOf = (all: readonly { readonly name: string }[]): readonly string[] =>
  all.map(({ name }) => name);

function usedTwice(end: Connection, before: readonly Connection[]): "plug" | "socket" | undefined {
  if (before.some(({ part, plug }) => part === end.part && plug === end.plug)) return "plug";
  return before.some(({ into, socket }) => into === end.into && socket === end.socket)
    ? "socket"
    : undefined;
}
