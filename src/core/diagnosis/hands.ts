import { standInFor } from "#core/rig/arranged.ts";
import { chainTo } from "#core/rig/chain.ts";
import type { Move } from "#core/rig/moves.ts";
import { type BuiltRig, build, type Rig, wornAt } from "#core/rig/rig.ts";
import type { Era } from "./era.ts";
import { mendsAt } from "./mends.ts";

/** A thing on the way to a position, and every move that somebody may say was made there. */
export interface Hands {
  readonly part: string;
  readonly moves: readonly Move[];
}

/**
 * What hands may have done on the way to a position as the rig is now, the listener last: whether the program would have proposed it or
 * not, it can be told. Things that nothing can be done to are left out.
 */
export function handsAt(era: Era, position: string): readonly Hands[] {
  const now = era.course.state.rig;
  const rig = build(now);
  const worn = wornAt(now, position);
  const mends = mendsAt(era, position, new Set()).map(({ move }) => move);
  const moves = [...mends, ...byWearer(rig, position), ...putBack(era, now)];
  return chainTo(rig, position)
    .map(({ part }) => ({
      part,
      moves: moves.filter((move) => isAt(partsOf(move, worn), part)),
    }))
    .filter(({ moves: some }) => some.length > 0);
}

/** The parts, or places of them, that a move is made at. */
function partsOf(move: Move, worn: string): readonly string[] {
  switch (move.move) {
    case "set right":
    case "replaced":
      return [move.place];
    case "exchanged":
    case "turned round":
      return [worn];
    case "put back":
      return [move.part, standInFor(move.part)];
    default:
      return [move.part];
  }
}

/** Whether one of some places is a part, or one of its sockets. */
const isAt = (places: readonly string[], part: string): boolean =>
  places.some((place) => place === part || place.startsWith(`${part}, `));

/** What is worn over the ears is turned round, and exchanged with what another of its kind wears; what goes into them is neither. */
function byWearer(rig: BuiltRig, position: string): readonly Move[] {
  const worn = wornAt(rig, position);
  const { kind, oneListener } = rig.part(worn);
  if (oneListener) return [];
  const others = rig.positions
    .map(({ wears }) => wears)
    .filter((one) => one !== worn && rig.part(one).kind === kind);
  return [
    { move: "turned round", position },
    ...others.map((other): Move => ({ move: "exchanged", parts: [worn, other] })),
  ];
}

/** What was laid aside or moved goes back. */
const putBack = ({ course }: Era, { parts }: Rig): readonly Move[] =>
  parts
    .map(({ id }) => id)
    .filter((part) => course.state.before.has(part))
    .map((part) => ({ move: "put back", part }));
