import type { Position } from "#core/rig/rig.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import type { Decibels } from "#core/units/units.ts";
import { type Derived, derive, type State } from "./derive.ts";
import { type Levels, levelsAt } from "./levels.ts";
import { holding, type Log } from "./log.ts";

/** How a position stood in one of two sessions. */
export interface Stood {
  readonly state: State;
  /** What a verdict named. */
  readonly fault?: RigFault;
}

/** By how much something is louder now than it was; less than none is a loss. */
export type LevelChange =
  /** What arrives at one ear. */
  | { readonly change: "ear"; readonly ear: Ear; readonly by: Decibels }
  /** One ear against the other: which of both changed nobody knows. */
  | { readonly change: "balance"; readonly ear: Ear; readonly by: Decibels }
  /** How loud the test signal was played for the answers. */
  | { readonly change: "played"; readonly by: Decibels };
export type Ear = "left" | "right";

/** Why something of a position cannot be compared. */
const gaps = [
  "only then",
  "only now",
  "not heard then",
  "not heard now",
  "no levels in both",
] as const;

/** What changed at one position from one session to another. */
export interface Change {
  readonly position: string;
  /** What stands on its tape now; of one that is gone, what stood there. */
  readonly name: string;
  readonly was?: Stood;
  readonly is?: Stood;
  readonly levels: readonly LevelChange[];
  /** What cannot be compared. */
  readonly gaps: readonly (typeof gaps)[number][];
}

/** Two sessions beside each other. */
export interface Compared {
  readonly positions: readonly Change[];
  /** Parts that stand in one of the rigs alone, by their ids. */
  readonly gone: readonly string[];
  readonly come: readonly string[];
}

/** Less than this is as it was: half of it is about what is just noticed. */
const same: Decibels = 1;

/** What changed from a session to a later one of the same rig; nothing where one of them has no rig. */
export function compared(then: Log, now: Log): Compared | undefined {
  const [before, after] = [derive(then), derive(now)];
  if (before === undefined || after === undefined) return undefined;
  const met = new Set<string>();
  const here = after.rig.positions.map((position) => {
    const old = sameIn(before, position);
    if (old !== undefined) met.add(old.id);
    return changeAt({ before, after, then, now }, old, position);
  });
  const left = before.rig.positions.filter(({ id }) => !met.has(id));
  const gone = left.map((old) => changeAt({ before, after, then, now }, old, undefined));
  return {
    positions: [...here, ...gone],
    gone: partsMissing(before, after),
    come: partsMissing(after, before),
  };
}

/** Whether a position stands otherwise than it did, or something arrives louder or less loud at its ears. */
export const hasChanged = ({ was, is, levels }: Change): boolean =>
  levels.some(({ change }) => change !== "played") ||
  (was !== undefined &&
    is !== undefined &&
    was.state !== "not heard" &&
    is.state !== "not heard" &&
    (was.state !== is.state || was.fault?.id !== is.fault?.id));

/** The same position in another session: by its id, else by the name on its tape. */
const sameIn = ({ rig }: Derived, { id, name }: Position): Position | undefined =>
  rig.positions.find((one) => one.id === id) ?? rig.positions.find((one) => one.name === name);

const partsMissing = (from: Derived, to: Derived): readonly string[] =>
  from.rig.parts.map(({ id }) => id).filter((id) => !to.rig.parts.some((part) => part.id === id));

interface Both {
  readonly before: Derived;
  readonly after: Derived;
  readonly then: Log;
  readonly now: Log;
}

function changeAt(
  { before, after, then, now }: Both,
  old: Position | undefined,
  position: Position | undefined,
): Change {
  const was = old && stoodAt(before, old.id);
  const is = position && stoodAt(after, position.id);
  const levels =
    old && position
      ? louder(levelsAt(holding(then), old.id), levelsAt(holding(now), position.id))
      : undefined;
  return {
    position: position?.id ?? old?.id ?? "",
    name: position?.name ?? old?.name ?? "",
    ...(was === undefined ? {} : { was }),
    ...(is === undefined ? {} : { is }),
    levels: levels?.filter(({ by }) => Math.abs(by) >= same) ?? [],
    gaps: gapsOf(was, is, levels),
  };
}

function stoodAt(derived: Derived, position: string): Stood {
  const state = derived.state(position);
  const [fault] =
    state === "wrong" || state === "unsure"
      ? (derived.standing(position).leading?.group.faults ?? [])
      : [];
  return { state, ...(fault === undefined ? {} : { fault }) };
}

function gapsOf(
  was: Stood | undefined,
  is: Stood | undefined,
  levels: readonly LevelChange[] | undefined,
): Change["gaps"] {
  if (is === undefined) return ["only then"];
  if (was === undefined) return ["only now"];
  const unheard = [
    ...(was.state === "not heard" ? (["not heard then"] as const) : []),
    ...(is.state === "not heard" ? (["not heard now"] as const) : []),
  ];
  const levelled = levels?.some(({ change }) => change !== "played");
  return unheard.length > 0 || levelled ? unheard : ["no levels in both"];
}

/** What both have, the most exact first: ears that were measured, else one ear against the other. */
function louder(was: Levels, is: Levels): readonly LevelChange[] {
  const played = change(was.played, is.played, (by) => ({ change: "played", by }));
  const ears = (["left", "right"] as const).flatMap((ear) =>
    change(was[ear], is[ear], (by) => ({ change: "ear", ear, by })),
  );
  if (ears.length > 0) return [...ears, ...played];
  const balance = change(was.balance, is.balance, (by) => ({
    change: "balance",
    ear: by < 0 ? "right" : "left",
    by: -Math.abs(by),
  }));
  return [...balance, ...played];
}

function change(
  was: Decibels | undefined,
  is: Decibels | undefined,
  made: (by: Decibels) => LevelChange,
): readonly LevelChange[] {
  if (was === undefined || is === undefined) return [];
  const by = Math.round((is - was) * 10) / 10;
  return Number.isFinite(by) ? [made(by)] : [];
}
