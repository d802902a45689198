import type { Happening, MeasuredGains } from "#core/checks/finding.ts";
import { relativeGains } from "#core/rig/ear-matrix.ts";
import { type Effect, effectOf } from "#core/rig/effect.ts";
import type { Move } from "#core/rig/moves.ts";
import { clientId, type WantedFeed } from "#core/rig/rig.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import type { Derived, State } from "#core/session/derive.ts";
import { levelsAt } from "#core/session/levels.ts";
import type { Decibels, DecibelsFullScale, Probability } from "#core/units/units.ts";
import { levelOf, type SheetLevel } from "./sheet-levels.ts";

/** How a position stands when the sheet is made; 'as ordered' is a feed that is mono or in one ear on purpose. */
export type SeatState = State | "as ordered";

/** One position on the sheet. */
export interface SheetSeat extends SheetLevel {
  readonly id: string;
  readonly name: string;
  /** What is worn there now, or the instrument. */
  readonly wears: string;
  /** What is wanted there; nothing where it is stereo. */
  readonly wants: WantedFeed | undefined;
  readonly state: SeatState;
  /** What is wrong, or as it was ordered, and how sure that is. */
  readonly wrong: Wrong | undefined;
  /** Of the test signal at the last finding there. */
  readonly level: DecibelsFullScale | undefined;
  /** By how much the right had to be louder to be in the middle; nothing where nobody could tell. */
  readonly balance: Decibels | "never" | undefined;
  /** What was measured there since anything on the way was touched. */
  readonly measured: MeasuredGains | undefined;
}

/** What is wrong at a position. */
export interface Wrong {
  readonly fault: RigFault;
  /** How many others no check here tells from it. */
  readonly alike: number;
  readonly probability: Probability;
  readonly effect: Effect;
  /** It is in what all positions share. */
  readonly shared: boolean;
}

/** Every position of a session, in the order of the rig; gives way after each. */
export function* seatsIn(
  derived: Derived,
  sinceDrawn: readonly Move[],
): Generator<void, readonly SheetSeat[], void> {
  const now = derived.evidence.era.course.state.rig;
  const seats: SheetSeat[] = [];
  for (const { id, name, wears, wants } of derived.rig.positions) {
    const { played, pushed, measured } = levelsAt(derived, id);
    seats.push({
      id,
      name,
      wears: now.positions.find((one) => one.id === id)?.wears ?? wears,
      wants,
      ...standingOf(derived, id),
      level: played,
      balance: pushed,
      measured: measured?.gains,
      ...levelOf(derived, id, sinceDrawn),
    });
    yield;
  }
  return seats;
}

/** The position a finding speaks of. */
export function positionOf(happening: Happening): string | undefined {
  if (happening.kind !== "finding" || !("position" in happening.finding.asked)) return undefined;
  return happening.finding.asked.position;
}

function standingOf(derived: Derived, position: string): Pick<SheetSeat, "state" | "wrong"> {
  const state = derived.state(position);
  const wrong = state === "wrong" || state === "unsure" ? leadingAt(derived, position) : undefined;
  const ordered = state === "wrong" && wrong?.fault.part === clientId;
  return { state: ordered ? "as ordered" : state, wrong };
}

/** Whom a verdict names at a position, with what it does there. */
export function leadingAt(derived: Derived, position: string): Wrong | undefined {
  const { model, rig } = derived;
  const { leading } = derived.standing(position);
  const [fault] = leading?.group.faults ?? [];
  if (leading === undefined || fault === undefined) return undefined;
  return {
    fault,
    alike: leading.group.faults.length - 1,
    probability: leading.probability,
    effect: effectOf(relativeGains(model.rig, position, [fault])),
    shared: leading.group.branch === model.root && rig.positions.length > 1,
  };
}
