import type { Position } from "#core/rig/rig.ts";
import type { Seconds } from "#core/units/units.ts";
import type { Derived } from "./derive.ts";

/** Why somebody goes there next. */
const reasons = [
  "what all share is mended first",
  "it was begun",
  "one seat tells of what all share",
  "all at once is quicker than walking",
  "it is the next",
  "it is mended soonest",
] as const;
export type Because = (typeof reasons)[number];

/** Where to go next in a room: to one position, or to all of them at once with hands up; nowhere once all are well. */
export type Where =
  | {
      readonly go: "position";
      readonly position: string;
      readonly because: Because;
    }
  | {
      readonly go: "all at once";
      readonly positions: readonly string[];
      readonly because: Because;
    }
  | { readonly go: "nowhere" };

/** One pass with all hands up, for five seats or for thirty; and one seat by itself with the walk to it. Handbook, section 1. */
const handsUp: Seconds = 50;
const oneSeat: Seconds = 35;

/** Looks at one position after the other, and gives way after each: a press may come in between. */
export function* whereNext(derived: Derived): Generator<void, Where, void> {
  const seats: Seen[] = [];
  const { faults, positions } = derived.model.root;
  const trunk = new Set(positions.length > 1 ? faults : []);
  for (const position of positions) {
    const state = derived.state(position);
    if (state === "absent") continue;
    const standing = state === "not heard" ? undefined : derived.standing(position);
    const [fault] = standing?.leading?.group.faults ?? [];
    const wrong = state === "wrong" || state === "unsure";
    const shared = wrong && fault !== undefined && trunk.has(fault);
    seats.push({ position, state, seconds: standing?.choice?.seconds ?? 0, shared });
    yield;
  }
  return decided(seats);
}

interface Seen {
  readonly position: string;
  readonly state: ReturnType<Derived["state"]>;
  readonly seconds: Seconds;
  readonly shared: boolean;
}

function decided(seats: readonly Seen[]): Where {
  const to = (seat: Seen, because: Because): Where => ({
    go: "position",
    position: seat.position,
    because,
  });
  const shared = seats.find((seat) => seat.shared);
  if (shared !== undefined) return to(shared, "what all share is mended first");
  const begun = seats.find(({ state }) => state === "begun");
  if (begun !== undefined) return to(begun, "it was begun");
  const unheard = seats.filter(({ state }) => state === "not heard");
  const [next] = unheard;
  if (next !== undefined) {
    if (unheard.length * oneSeat <= handsUp) return to(next, "it is the next");
    if (unheard.length === seats.length) return to(next, "one seat tells of what all share");
    const positions = unheard.map(({ position }) => position);
    return { go: "all at once", positions, because: "all at once is quicker than walking" };
  }
  const [soonest] = seats
    .filter(({ state }) => state === "wrong" || state === "unsure")
    .sort((a, b) => a.seconds - b.seconds);
  return soonest === undefined ? { go: "nowhere" } : to(soonest, "it is mended soonest");
}

/** The next position in the row that nobody heard yet, as whoever walks past one comes to it; round again at the end. */
export function afterThis({ rig, state }: Derived, position: string): Position | undefined {
  const at = rig.positions.findIndex(({ id }) => id === position);
  return [...rig.positions.slice(at + 1), ...rig.positions.slice(0, Math.max(0, at))].find(
    ({ id }) => state(id) === "not heard" || state(id) === "begun",
  );
}
