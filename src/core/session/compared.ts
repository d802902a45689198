import type { Position, Rig, WantedFeed } from "#core/rig/rig.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import { firstName } from "#core/rig/same-parts.ts";
import type { Decibels } from "#core/units/units.ts";
import { type Derived, derive, type State } from "./derive.ts";
import { balanceIn, earsIn, type Levels, levelsAt } from "./levels.ts";
import type { Log } from "./log.ts";
import { partsMissing, samePositions } from "./same-positions.ts";

/** How a position stood in one of two sessions. */
export interface Stood {
  readonly state: State;
  /** What was wanted there; left out, stereo. */
  readonly wants?: WantedFeed;
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
  /** Heard both times, it stands otherwise: in another state, or with something else wrong. */
  readonly otherwise: boolean;
  readonly levels: readonly LevelChange[];
  /** What cannot be compared. */
  readonly gaps: readonly (typeof gaps)[number][];
}

/** Two sessions beside each other. */
export interface Compared {
  /** Nothing says that both are of one rig: nothing is compared. */
  readonly another: boolean;
  readonly positions: readonly Change[];
  /** Parts that stand in one of the rigs alone, by the names they have there. */
  readonly gone: readonly string[];
  readonly come: readonly string[];
}

/** Less than this is as it was. A difference between the ears is just noticed at 0.5 to 1 dB (Breebaart and Faller). */
const same: Decibels = 1;

/** What changed from a session to a later one of the same rig; nothing where one of them has no rig. */
export function compared(then: Log, now: Log): Compared | undefined {
  const [before, after] = [derive(then), derive(now)];
  if (before === undefined || after === undefined) return undefined;
  const pairs = samePositions(before.rig, after.rig);
  if (pairs.size === 0) return { another: true, positions: [], gone: [], come: [] };
  const met = new Set(pairs.values());
  const left = before.rig.positions.filter((one) => !met.has(one));
  const both = { before, after };
  return {
    another: false,
    positions: [
      ...after.rig.positions.map((position) => changeAt(both, pairs.get(position), position)),
      ...left.map((old) => changeAt(both, old, undefined)),
    ],
    gone: partsMissing(before.rig, after.rig),
    come: partsMissing(after.rig, before.rig),
  };
}

/** Whether a position stands otherwise than it did, something else is wanted there, or something arrives louder or less loud at its ears. */
export const hasChanged = (change: Change): boolean =>
  change.levels.some((one) => one.change !== "played") ||
  change.otherwise ||
  isWantedOtherwise(change);

/** Why nothing at all of a position can be compared. */
const whole: readonly (typeof gaps)[number][] = [
  "only then",
  "only now",
  "not heard then",
  "not heard now",
];

/** Whether anything of a position could be compared. */
export const wasCompared = (change: Change): boolean =>
  hasChanged(change) || !change.gaps.some((gap) => whole.includes(gap));

/** Whether something else is wanted at a position than was. */
export const isWantedOtherwise = ({ was, is }: Change): boolean =>
  was !== undefined && is !== undefined && was.wants !== is.wants;

interface Both {
  readonly before: Derived;
  readonly after: Derived;
}

function changeAt(
  { before, after }: Both,
  old: Position | undefined,
  position: Position | undefined,
): Change {
  const was = old && stoodAt(before, old);
  const is = position && stoodAt(after, position);
  const levels =
    old && position ? louder(levelsAt(before, old.id), levelsAt(after, position.id)) : undefined;
  return {
    position: position?.id ?? old?.id ?? "",
    name: position?.name ?? old?.name ?? "",
    ...(was === undefined ? {} : { was }),
    ...(is === undefined ? {} : { is }),
    otherwise: was !== undefined && is !== undefined && isOtherwise(before.rig, was, after.rig, is),
    levels: levels?.filter(({ by }) => Math.abs(by) >= same) ?? [],
    gaps: gapsOf(was, is, levels),
  };
}

function stoodAt(derived: Derived, { id, wants }: Position): Stood {
  const state = derived.state(id);
  const [fault] =
    state === "wrong" || state === "unsure"
      ? (derived.standing(id).leading?.group.faults ?? [])
      : [];
  return {
    state,
    ...(wants === undefined ? {} : { wants }),
    ...(fault === undefined ? {} : { fault }),
  };
}

const isOtherwise = (before: Rig, was: Stood, after: Rig, is: Stood): boolean =>
  was.state !== "not heard" &&
  is.state !== "not heard" &&
  (was.state !== is.state || faultKey(before, was.fault) !== faultKey(after, is.fault));

/** A fault by what its part was called first; a person's, and what is not on the list, by themselves. */
function faultKey({ parts }: Rig, fault: RigFault | undefined): string | undefined {
  if (fault === undefined) return undefined;
  const part = parts.find(({ id }) => id === fault.part);
  return `${part === undefined ? "" : firstName(part)}${fault.id.slice(fault.part.length)}`;
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
  const [earsThen, earsNow] = [againstHealthy(was), againstHealthy(is)];
  const ears = (["left", "right"] as const).flatMap((ear) =>
    change(earsThen[ear], earsNow[ear], (by) => ({ change: "ear", ear, by })),
  );
  if (ears.length > 0) return [...ears, ...played];
  const balance = change(balanceIn(was), balanceIn(is), (by) => ({
    change: "balance",
    ear: by < 0 ? "right" : "left",
    by: -Math.abs(by),
  }));
  return [...balance, ...played];
}

/** Measured as it comes, an ear has no level of its own. */
const againstHealthy = ({ measured }: Levels) =>
  measured === undefined || measured.level === "as it comes" ? {} : earsIn(measured);

function change(
  was: Decibels | undefined,
  is: Decibels | undefined,
  made: (by: Decibels) => LevelChange,
): readonly LevelChange[] {
  if (was === undefined || is === undefined) return [];
  const by = Math.round((is - was) * 10) / 10;
  return Number.isFinite(by) ? [made(by)] : [];
}
