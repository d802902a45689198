import { isUnlisted } from "#core/diagnosis/fault-sets.ts";
import type { Group } from "#core/diagnosis/groups.ts";
import { provedIn } from "#core/proving/choice.ts";
import type { Move } from "#core/rig/moves.ts";
import type { Rig } from "#core/rig/rig.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import { type Derived, derive } from "#core/session/derive.ts";
import { holding, type Log, rigIn, titleOf } from "#core/session/log.ts";
import { type AskedNoise, askedIn } from "#core/session/noises.ts";
import { type Found, foundIn } from "./sheet-found.ts";
import { type HuntedNoise, huntedIn } from "./sheet-noises.ts";
import { type SheetSeat, seatsIn } from "./sheet-seats.ts";

/** A session as it is handed over on paper: plain data, without a word of any language. */
export interface Sheet {
  /** What it is called; else as its rig is. */
  readonly name: string;
  readonly who: string | undefined;
  /** Its first entry and its last, milliseconds since 1970; it may be named and signed long after it ended. */
  readonly begun: number;
  readonly ended: number;
  readonly rig: Rig;
  readonly seats: readonly SheetSeat[];
  /** Faults that were found, in the order they were. */
  readonly found: readonly Found[];
  /** Noises that were looked for or complained of, position by position. */
  readonly hunted: readonly HuntedNoise[];
  /** The noises that were asked after, of the ways as they are now. */
  readonly asked: readonly AskedNoise[];
  /** What answers here as a healthy chain does, and so was not tested. */
  readonly unheard: readonly Unheard[];
}

/** Faults of one part that no check here can hear. */
interface Unheard {
  readonly part: string;
  readonly faults: readonly RigFault[];
}

const known = new WeakMap<Log, Sheet>();

/**
 * The sheet of a session; nothing where no entry says what the rig is, nor where it proves a lead: that is a result of its own. A pure function of
 * the log, remembered by its identity.
 */
export function sheetOf(log: Log): Sheet | undefined {
  const making = sheetMaking(log);
  for (;;) {
    const { done, value } = making.next();
    if (done) return value;
  }
}

function provesLead(log: Log): boolean {
  const rig = rigIn(log);
  return rig !== undefined && provedIn(rig) !== undefined;
}

/** The same, a piece at a time: a long session takes seconds, and a press may come in between. */
export function* sheetMaking(log: Log): Generator<void, Sheet | undefined, void> {
  if (provesLead(log)) return undefined;
  const found = known.get(log);
  const derived = found === undefined ? derive(log) : undefined;
  if (derived === undefined) return found;
  yield;
  const made = yield* sheetFrom(log, derived);
  known.set(log, made);
  return made;
}

function* sheetFrom(log: Log, derived: Derived): Generator<void, Sheet, void> {
  const entries = holding(log);
  const { name, who } = titleOf(log);
  const times = entries.filter(({ entry }) => entry !== "titled").map(({ at }) => at);
  return {
    name: name || derived.rig.name,
    who: who || undefined,
    begun: times.reduce((least, at) => Math.min(least, at), Number.POSITIVE_INFINITY),
    ended: times.reduce((most, at) => Math.max(most, at), 0),
    rig: derived.rig,
    seats: yield* seatsIn(derived, sinceDrawn(entries)),
    found: yield* foundIn(derived),
    hunted: yield* huntedIn(derived),
    asked: askedIn(derived),
    unheard: unheardBy(derived.groups),
  };
}

/** Every move since the rig was drawn last. */
function sinceDrawn(entries: Log): readonly Move[] {
  const drawn = entries.findLastIndex(({ entry }) => entry === "drawing");
  return entries.slice(drawn + 1).flatMap((one) => (one.entry === "move" ? [one.move] : []));
}

/** Every inaudible fault, by the part it is of. */
function unheardBy(groups: readonly Group[]): readonly Unheard[] {
  const parts = new Map<string, RigFault[]>();
  for (const { inaudible, faults } of groups)
    for (const fault of inaudible ? faults : []) {
      if (isUnlisted(fault)) continue;
      parts.set(fault.part, [...(parts.get(fault.part) ?? []), fault]);
    }
  return [...parts].map(([part, faults]) => ({ part, faults }));
}
