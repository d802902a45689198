import type { Move } from "#core/index.ts";
import { type Arranged, standInFor } from "#core/rig/arranged.ts";
import { isPart } from "#core/rig/plug-troubles.ts";
import { type BuiltRig, clientId, listenerOf, operatorId } from "#core/rig/rig.ts";
import { oneOf, type Path, type Problem } from "./problem.ts";
import { noPart } from "./rig-problems.ts";

/** What a move names that is not there, with paths from `at`. `state` is the rig as the moves before it left it, and `now` the same, built. */
export function moveProblems(
  now: BuiltRig,
  state: Arranged,
  move: Move,
  at: Path,
): readonly Problem[] {
  switch (move.move) {
    case "set right":
    case "replaced":
      return isPlace(now, move.place)
        ? []
        : amiss(at, "place", "a part, a socket as 'part, socket', or a person", move.place);
    case "exchanged":
      return exchangeProblems(now, move.parts, [...at, "parts"]);
    case "turned round":
      return listed(
        at,
        "position",
        now.positions.map(({ id }) => id),
        move.position,
      );
    default:
      return isPart(now, move.part)
        ? partProblems(now, state, move, at)
        : [noPart([...at, "part"], move.part)];
  }
}

const amiss = (at: Path, key: string | number, expected: string, found: string): Problem[] => [
  { path: [...at, key], expected, found },
];

/** A problem where a name is not one of a list; `none` says what it would take for the list to have any. */
const listed = (
  at: Path,
  key: string,
  names: readonly string[],
  found: string,
  none?: string,
): readonly Problem[] => (names.includes(found) ? [] : amiss(at, key, oneOf(names, none), found));

function partProblems(
  now: BuiltRig,
  { before }: Arranged,
  move: Extract<Move, { readonly part: string }>,
  at: Path,
): readonly Problem[] {
  const { part } = move;
  switch (move.move) {
    case "known good in":
      return isPart(now, standInFor(part))
        ? amiss(at, "part", "a part that is not laid aside already", part)
        : [];
    case "put back":
      return listed(at, "part", [...before.keys()], part, "a part that was laid aside or moved");
    case "set": {
      const controls = Object.keys(now.part(part).controls);
      return listed(at, "control", controls, move.control, "a part that has controls");
    }
    case "plugged anew":
    case "moved":
      return plugProblems(now, move, at);
  }
}

function exchangeProblems(
  now: BuiltRig,
  parts: readonly [string, string],
  at: Path,
): readonly Problem[] {
  const missing = parts.flatMap((id, index): Problem[] =>
    isPart(now, id) ? [] : [noPart([...at, index], id)],
  );
  return missing.length === 0 && parts[0] === parts[1]
    ? amiss(at, 1, "another part", parts[1])
    : missing;
}

function plugProblems(
  now: BuiltRig,
  move: Extract<Move, { readonly plug: string }>,
  at: Path,
): readonly Problem[] {
  const plugs = now.plugged.flatMap(({ part, plug }) => (part === move.part ? [plug] : []));
  const lost = listed(at, "plug", plugs, move.plug, "a part that is plugged in");
  if (lost.length > 0 || move.move === "plugged anew") return lost;
  if (!isPart(now, move.into)) return [noPart([...at, "into"], move.into)];
  const free = now
    .part(move.into)
    .sockets.map(({ name }) => name)
    .filter((name) => !now.plugged.some((one) => one.into === move.into && one.socket === name));
  return listed(at, "socket", free, move.socket, "a part with a socket that is free");
}

/** Where a hand or an eye goes: a part, one socket of it, a person, or all that some positions have alone. */
function isPlace(now: BuiltRig, place: string): boolean {
  const people = [operatorId, clientId, ...now.positions.map(({ id }) => listenerOf(id))];
  return (
    people.includes(place) ||
    isPart(now, place) ||
    now.parts.some(({ id }) =>
      now.part(id).sockets.some(({ name }) => `${id}, ${name}` === place),
    ) ||
    place.split(", ").every((one) => now.positions.some(({ id }) => id === one))
  );
}
