import type { Connection } from "#core/index.ts";
import { fits } from "#core/parts/plugs.ts";
import type { BuiltRig } from "#core/rig/rig.ts";
import { oneOf, type Path, type Problem } from "./problem.ts";

/** Whether a rig has this part: people are none. */
export const isPart = (rig: BuiltRig, id: string): boolean =>
  rig.parts.some((part) => part.id === id && rig.part(id).family !== "person");

/** A name that no part of a rig bears. */
export const noPart = (path: Path, found: string): Problem => ({
  path,
  expected: "the id of a part of the rig",
  found,
});

/** What is amiss with one plug and its socket, with a path from `at`. */
export function plugProblems(rig: BuiltRig, index: number, at: Path): readonly Problem[] {
  const path = [...at, "plugged", index];
  const end = rig.plugged[index];
  if (end === undefined) return [];
  for (const key of ["part", "into"] as const)
    if (!isPart(rig, end[key])) return [noPart([...path, key], end[key])];
  const [plug, socket] = meeting(rig, end);
  const amiss = (key: "plug" | "socket", expected: string): Problem[] => [
    { path: [...path, key], expected, found: end[key] },
  ];
  if (plug === undefined) return amiss("plug", oneOf(namesOf(rig.part(end.part).plugs)));
  if (socket === undefined) return amiss("socket", oneOf(namesOf(rig.part(end.into).sockets)));
  if (!fits({ kind: plug.kind }, { kind: socket.kind }))
    return amiss("socket", `a socket that a ${plug.kind} plug goes into`);
  const twice = usedTwice(end, rig.plugged.slice(0, index));
  return twice === undefined ? [] : amiss(twice, `a ${twice} that nothing above uses`);
}

const meeting = (rig: BuiltRig, { part, plug, into, socket }: Connection) =>
  [
    rig.part(part).plugs.find(({ name }) => name === plug),
    rig.part(into).sockets.find(({ name }) => name === socket),
  ] as const;

const namesOf = (all: readonly { readonly name: string }[]): readonly string[] =>
  all.map(({ name }) => name);

function usedTwice(end: Connection, before: readonly Connection[]): "plug" | "socket" | undefined {
  if (before.some(({ part, plug }) => part === end.part && plug === end.plug)) return "plug";
  return before.some(({ into, socket }) => into === end.into && socket === end.socket)
    ? "socket"
    : undefined;
}
