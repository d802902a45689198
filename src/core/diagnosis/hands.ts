import { standInFor } from "#core/rig/arranged.ts";
import { chainTo, isAt } from "#core/rig/chain.ts";
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
  const mends = mendsAt(era, position, new Set()).map(({ move }) => move);
  const moves = [...mends, ...byWearer(rig, position), ...putBack(era, now)];
  return chainTo(rig, position)
    .map(({ part }) => ({
      part,
      moves: moves.filter((move) => isAt(part, handAt(rig, position, move))),
    }))
    .filter(({ moves: some }) => some.length > 0);
}

/** The place on the way to a position that a hand goes to: a part, or one socket of it. */
export function handAt(rig: BuiltRig, position: string, move: Move): string {
  const worn = wornAt(rig, position);
  switch (move.move) {
    case "set right":
    case "replaced":
      return move.place;
    case "exchanged":
      return move.parts.find((part) => part === worn) ?? move.parts[0];
    case "turned round":
      return worn;
    case "moved":
      return (
        rig.plugged.find(({ part, plug }) => part === move.part && plug === move.plug)?.into ?? ""
      );
    case "put back": {
      const instead = standInFor(move.part);
      return rig.parts.some(({ id }) => id === instead) ? instead : move.part;
    }
    default:
      return move.part;
  }
}

/** What is worn over the ears is turned round, and exchanged with what another of its kind wears; what goes into them is neither, nor is an instrument. */
function byWearer(rig: BuiltRig, position: string): readonly Move[] {
  const worn = wornAt(rig, position);
  const { kind, oneListener, measures } = rig.part(worn);
  if (oneListener || measures !== undefined) return [];
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
