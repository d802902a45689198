import type { Move } from "#core/rig/moves.ts";
import {
  type BuiltRig,
  build,
  type Connection,
  clientId,
  type Rig,
  wornAt,
} from "#core/rig/rig.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import { staying } from "#core/rig/staying.ts";
import type { Probability, Seconds } from "#core/units/units.ts";
import type { Era } from "./era.ts";
import type { Evidence } from "./evidence.ts";
import { isUnlisted } from "./fault-sets.ts";

/** Something a hand can do on the way to a position that may cure what is wrong there. */
export interface Mend {
  readonly move: Move;
  readonly seconds: Seconds;
  /** How likely it takes a fault away. */
  readonly cures: (fault: RigFault) => Probability;
}

/** The move that answers a fault: what shows is set right, what does not is replaced. */
const answering = ({ seen, place }: RigFault): Move => ({
  move: seen ? "set right" : "replaced",
  place,
});

/** The repair for a fault that can be made at a position: what answers it; else what is likeliest to cure it, and of these the quickest. */
export function mendFor(
  { era, seen, cannot }: Evidence,
  position: string,
  fault: RigFault,
): Pick<Mend, "move" | "seconds"> | undefined {
  const can = (move: Move) => !cannot.has(JSON.stringify(move));
  const answer = answering(fault);
  if (can(answer)) return { move: answer, seconds: fault.repair };
  return mendsAt(era, position, seen)
    .filter(({ move, cures }) => can(move) && cures(fault) > 0)
    .toSorted((a, b) => b.cures(fault) - a.cures(fault) || a.seconds - b.seconds)[0];
}

/** Seconds, handbook section 8 (common practice, no source). */
const cost = {
  thisEnd: 5,
  farEnd: 25,
  anotherOutput: 20,
  knownGood: 20,
  /** Beside the look, or once it is known what to set. */
  set: 5,
  anotherPerson: 30,
} as const;

/** Everything a hand can do on the way to a position as the rig is now. `seen`: places that were looked at since they were touched. */
export function mendsAt(era: Era, position: string, seen: ReadonlySet<string>): readonly Mend[] {
  const now = era.course.state.rig;
  const rig = build(now);
  const faults = [...era.onTheWay(position)].filter((fault) => !isUnlisted(fault));
  const worn = wornAt(now, position);
  // What is meant is asked once.
  const places = [...new Set(faults.map(({ place }) => place))].filter(
    (one) => one !== clientId || !seen.has(one),
  );
  const moves: { move: Move; seconds: Seconds }[] = [
    ...places.flatMap((place) => byPlace(rig, faults, place, seen)),
    ...plugsOn(now, faults).map(({ part, plug }) => ({
      move: { move: "plugged anew", part, plug } as const,
      seconds: part === worn ? cost.thisEnd : cost.farEnd,
    })),
    ...lent(now, worn),
    ...elsewhere(rig, worn),
  ];
  return moves.map(({ move, seconds }) => ({
    move,
    seconds,
    cures: (fault) => (isLeft(fault, move, now) ? 1 - staying(fault, move, now) : 1),
  }));
}

/** What a look shows set right, and what it does not show replaced. */
function byPlace(
  rig: BuiltRig,
  faults: readonly RigFault[],
  place: string,
  seen: ReadonlySet<string>,
): readonly { move: Move; seconds: Seconds }[] {
  const there = faults.filter((fault) => fault.place === place);
  const shown = there.filter((fault) => fault.seen);
  const hidden = there.filter((fault) => !fault.seen);
  /** What plugging anew may clear is no reason to replace anything. */
  const lasting = hidden.filter((fault) => !fault.cleans);
  const [first] = shown;
  const look = first === undefined || seen.has(place) ? 0 : rig.part(first.part).look;
  const person = rig.parts.some(({ id }) => id === place && rig.part(id).family === "person");
  const most = person ? cost.anotherPerson : Math.max(...hidden.map(({ repair }) => repair));
  return [
    ...(first === undefined
      ? []
      : [{ move: { move: "set right", place } as const, seconds: look + cost.set }]),
    ...(lasting.length === 0
      ? []
      : [{ move: { move: "replaced", place } as const, seconds: most }]),
  ];
}

/** Plugs on the way with something that plugging anew may cure. */
const plugsOn = ({ plugged, parts }: Rig, faults: readonly RigFault[]): readonly Connection[] =>
  plugged.filter(
    ({ part, plug, into, socket }) =>
      !parts.some(({ id, good }) => id === part && good) &&
      faults.some(
        ({ part: id, at, cleans, edits }) =>
          edits.some((edit) => id === part && edit.edit === "depth" && edit.plug === plug) ||
          (cleans &&
            ((id === part && (at === plug || at === "body")) || (id === into && at === socket))),
      ),
  );

/** Good headphones instead of those worn, unless they are good already. */
const lent = ({ parts }: Rig, worn: string): readonly { move: Move; seconds: Seconds }[] =>
  parts.some(({ id, good }) => id === worn && good)
    ? []
    : [{ move: { move: "known good in", part: worn }, seconds: cost.knownGood }];

/** Another output of the same box that nothing stands in. */
function elsewhere(rig: BuiltRig, worn: string): readonly { move: Move; seconds: Seconds }[] {
  const end = rig.plugged.find(({ part }) => part === worn);
  if (end === undefined) return [];
  const box = rig.part(end.into);
  const here = box.sockets.find(({ name }) => name === end.socket);
  const other = box.sockets.find(
    ({ name, side, kind, size, harms }) =>
      side === "out" &&
      here?.side === "out" &&
      kind === here.kind &&
      size === here.size &&
      harms === undefined &&
      !rig.plugged.some(({ into, socket }) => into === end.into && socket === name),
  );
  if (other === undefined || rig.positions.length < 2) return [];
  const { part, plug, into } = end;
  return [
    { move: { move: "moved", part, plug, into, socket: other.name }, seconds: cost.anotherOutput },
  ];
}

/** Whether a fault is still on the way after a move, so far as moves take parts off it. */
function isLeft(fault: RigFault, move: Move, now: Rig): boolean {
  if (move.move === "known good in") return fault.part !== move.part;
  if (move.move !== "moved") return true;
  const from = now.plugged.find(({ part, plug }) => part === move.part && plug === move.plug);
  return from === undefined || fault.part !== from.into || fault.at !== from.socket;
}
