import type { Probability } from "#core/units/units.ts";
import { standInFor } from "./arranged.ts";
import type { Move } from "./moves.ts";
import type { Connection, Rig } from "./rig.ts";
import type { RigFault } from "./rig-faults.ts";

/** How likely a fault that was there before a move is there after it; `before` is the rig that the hand met. */
export function staying(fault: RigFault, move: Move, before: Rig): Probability {
  switch (move.move) {
    case "set right":
      return fault.place === move.place && fault.seen ? 0 : 1;
    case "replaced":
      return fault.place === move.place ? 0 : replugged(fault, endsOf(before, move.place), true);
    case "plugged anew": {
      const ends = endsOf(before, move.part).filter(({ plug }) => plug === move.plug);
      return replugged(fault, ends, false);
    }
    case "exchanged":
      return replugged(
        fault,
        move.parts.flatMap((part) => endsOf(before, part)),
        true,
      );
    case "known good in":
      return replugged(fault, endsOf(before, move.part), true);
    case "put back":
      return replugged(
        fault,
        [...endsOf(before, move.part), ...endsOf(before, standInFor(move.part))],
        true,
      );
    case "moved": {
      const ends = endsOf(before, move.part).filter(({ plug }) => plug === move.plug);
      return replugged(fault, ends, true);
    }
    case "set":
      return sets(fault, move.part, move.control) ? 0 : 1;
    case "turned round":
      return 1;
  }
}

const endsOf = ({ plugged }: Rig, part: string): readonly Connection[] =>
  plugged.filter((one) => one.part === part);

const sets = ({ part, edits }: RigFault, id: string, control: string): boolean =>
  part === id && edits.some((edit) => edit.edit === "control" && edit.control === control);

/**
 * 'Plug not home' is always cured by plugging in, dirty contacts and normals about half the time (handbook, section 6; common practice, no
 * source). A plug that stood in the wrong socket finds the right one half of the time when it goes in elsewhere or comes anew (common
 * practice, no source).
 */
function replugged(fault: RigFault, ends: readonly Connection[], elsewhere: boolean): Probability {
  const here = ends.filter(({ part }) => part === fault.part);
  const plugs = here.map(({ plug }) => plug);
  for (const edit of fault.edits) {
    if (edit.edit === "depth" && plugs.includes(edit.plug)) return 0;
    if (edit.edit === "socket" && elsewhere && plugs.includes(edit.plug)) return 0.5;
  }
  const rubbed =
    here.some(({ plug }) => fault.at === plug || fault.at === "body") ||
    ends.some(({ into, socket }) => into === fault.part && socket === fault.at);
  return fault.cleans && rubbed ? 0.5 : 1;
}

/** How often what replaces a part is as faulty as an old one, since it was tried before. Common practice, no source. */
const newer = 0.05;

/** The odds, in shares of its own, that a move brings a fault along: what replaces a part is not always whole. */
export const arriving = (fault: RigFault, move: Move): number =>
  move.move === "replaced" &&
  fault.place === move.place &&
  !fault.seen &&
  fault.edits.every(({ edit }) => edit !== "depth" && edit !== "socket" && edit !== "control")
    ? newer
    : 0;
