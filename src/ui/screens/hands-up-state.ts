import { earCheck } from "#core/checks/catalogue.ts";
import type { EarCheck } from "#core/checks/check.ts";
import type { Place } from "#core/listening/heard.ts";
import type { Derived } from "#core/session/derive.ts";
import type { Log, Said } from "#core/session/log.ts";
import { asHeard } from "./ask-state.ts";

/** One sound of a pass: what is played, and where everybody points whose feed is as it should be, in the core's order. */
interface Turn {
  readonly check: EarCheck;
  readonly expected: readonly Place[];
}

/** The sounds of one pass over all seats, in turn. Handbook, section 1. */
export const turns: readonly Turn[] = [
  { check: earCheck("left"), expected: ["left ear"] },
  { check: earCheck("right"), expected: ["right ear"] },
  { check: earCheck("pair"), expected: ["middle", "all round"] },
];

/** Where a pass stands. `seed` is that of the last playing. */
export interface Pass {
  readonly turn: number;
  readonly phase: "play" | "point";
  readonly seed: number;
  /** Seats that pointed elsewhere, or heard nothing. */
  readonly differs: ReadonlySet<string>;
}

/** A pass that was begun, with the log it was begun with. */
export interface PassSoFar {
  readonly log: Log;
  readonly pass: Pass;
}

export const firstTurn: Pass = { turn: 0, phase: "play", seed: 0, differs: new Set() };

/** Fewer are asked one by one. */
const fewest = 3;

/** The seats a pass is offered for: those not heard yet, where there are enough of them. */
export function seatsToPass({ rig, state }: Derived): readonly string[] {
  const ids = rig.positions.map(({ id }) => id).filter((id) => state(id) === "not heard");
  return ids.length < fewest ? [] : ids;
}

/** A pass with one seat tapped: it differs, or does not after all. */
export function tapped(pass: Pass, seat: string): Pass {
  const differs = new Set(pass.differs);
  if (!differs.delete(seat)) differs.add(seat);
  return { ...pass, differs };
}

/** Where everybody points, in the order of what was heard. */
export const expectedNow = ({ turn, seed }: Pass): readonly Place[] => {
  const now = turns[turn];
  return now === undefined ? [] : asHeard(now.check, seed, now.expected);
};

/** What is entered when a pass is done: all that was heard at every seat that never differed, and nothing of the others. */
export const heardBy = (seats: readonly string[], { differs }: Pass): readonly Said[] =>
  seats
    .filter((position) => !differs.has(position))
    .flatMap((position) =>
      turns.map(
        ({ check, expected }): Said => ({
          entry: "finding",
          finding: {
            asked: { check: check.name, position },
            results: expected.map((answer) => [answer]),
          },
        }),
      ),
    );
