import type { EarCheckName } from "#core/checks/check.ts";
import { fromHeadphoneSocket } from "#core/rig/rigs.ts";
import { type Derived, derive, modelFor } from "#core/session/derive.ts";
import { add, type Log } from "#core/session/log.ts";
import { whereNext } from "#core/session/where.ts";
import { seats } from "./rigs.ts";

/** How many positions speed is shown for. */
export const sizes = [8, 16, 32, 64] as const;

const heard = (log: Log, position: string, check: EarCheckName, ...answers: string[]): Log =>
  add(
    log,
    {
      entry: "finding",
      finding: { asked: { check, position }, results: answers.map((one) => [one]) },
    },
    0,
  );

/** A press: the log after it, and the position in hand. */
export interface Press {
  readonly log: Log;
  readonly position: string;
}

/** A whole session in a rig made anew: every seat is healthy but the last, whose left is dead; every fourth answered once by mistake. */
export function session(count: number): readonly Press[] {
  const rig = fromHeadphoneSocket(`${count} at a table`, seats(count));
  let log = add([], { entry: "drawing", rig }, 0);
  const presses: Press[] = [];
  const press = (position: string, check: EarCheckName, ...answers: string[]): void => {
    log = heard(log, position, check, ...answers);
    presses.push({ log, position });
  };
  for (const [at, { id }] of rig.positions.entries()) {
    const last = at === rig.positions.length - 1;
    if (at % 4 === 3 && !last) press(id, "left", "right ear");
    press(id, "left", last ? "nothing" : "left ear");
    press(id, "right", "right ear");
    press(id, "pair", ...(last ? ["right ear", "right ear"] : ["middle", "all round"]));
  }
  return presses;
}

/** Everything that follows from a log. Throws where it draws no rig. */
export function derivedFrom(log: Log): Derived {
  const derived = derive(log);
  if (derived === undefined) throw new Error("the log draws no rig");
  return derived;
}

/** Milliseconds of something. */
function timed(work: () => void): number {
  const start = performance.now();
  work();
  return performance.now() - start;
}

/** Milliseconds with so many positions, each press of a session worked out once, as it is when somebody presses. */
export interface Speed {
  readonly positions: number;
  /** The rig's table of answers and its groups. */
  readonly table: number;
  /** Beliefs from the whole log and what to do next at the position in hand: the middle of all presses, and the slowest. */
  readonly middle: number;
  readonly slowest: number;
  /** Where to go next over all positions after the last press, and the longest slice of it. */
  readonly where: number;
  readonly slice: number;
}

/** Measures one session. */
export function speedWith(positions: number): Speed {
  const presses = session(positions);
  const [drawing] = presses[0]?.log ?? [];
  const table = timed(() => {
    if (drawing?.entry === "drawing") modelFor(drawing.rig);
  });
  const each = presses.map(({ log, position }) => timed(() => derivedFrom(log).standing(position)));
  const sorted = each.toSorted((a, b) => a - b);
  const looking = whereNext(derivedFrom(presses.at(-1)?.log ?? []));
  const slices: number[] = [];
  for (let done = false; !done; )
    slices.push(
      timed(() => {
        done = looking.next().done === true;
      }),
    );
  return {
    positions,
    table,
    middle: sorted[Math.floor(sorted.length / 2)] ?? 0,
    slowest: Math.max(...each),
    where: slices.reduce((sum, one) => sum + one, 0),
    slice: Math.max(...slices),
  };
}
