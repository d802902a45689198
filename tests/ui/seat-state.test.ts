import { describe, expect, test } from "vitest";
import type { Move } from "#core/rig/moves.ts";
import { builtInRigs, straightIn } from "#core/rig/rigs.ts";
import { type Derived, derive } from "#core/session/derive.ts";
import { add, type Log, type Said } from "#core/session/log.ts";
import { nextSeat, seatsOf, trunkSound, trunkTrouble } from "#ui/screens/seat-state.ts";
import { words } from "#ui/words/english.ts";

const [rig = straightIn] = builtInRigs;

const found = (position: string, check: string, ...results: string[][]): Said =>
  ({ entry: "finding", finding: { asked: { check, position }, results } }) as Said;

const healthyAt = (position: string): readonly Said[] => [
  found(position, "left", ["left ear"]),
  found(position, "right", ["right ear"]),
  found(position, "pair", ["middle"], ["all round"]),
];

function after(...said: readonly Said[]): Derived {
  const log = said.reduce<Log>((so, one) => add(so, one, 0), add([], { entry: "drawing", rig }, 0));
  const derived = derive(log);
  if (derived === undefined) throw new Error("there is no rig");
  return derived;
}

const moves: readonly Move[] = [
  { move: "known good in", part: "headphones 2" },
  { move: "exchanged", parts: ["headphones 2", "headphones 3"] },
  { move: "turned round", position: "position 2" },
  { move: "plugged anew", part: "feed lead", plug: "far" },
];

describe("the board after a move", () => {
  test.each(moves)("$move", (move) => {
    const derived = after(...healthyAt("position 1"), { entry: "move", move });
    const seats = seatsOf(words, derived);
    expect(seats).toHaveLength(5);
    expect(nextSeat(seats, derived)).toBeDefined();
    expect(trunkTrouble(derived, seats)).toBeUndefined();
    expect(trunkSound(derived)).toBeGreaterThan(0.9);
  });
});

test("what one position alone has says nothing against what all share", () => {
  const dead = [found("position 2", "left", ["nothing"]), found("position 2", "left", ["nothing"])];
  const move: Move = { move: "exchanged", parts: ["headphones 2", "headphones 3"] };
  const exchanged = after(...healthyAt("position 1"), ...dead, { entry: "move", move });
  expect(trunkSound(exchanged)).toBeGreaterThan(0.9);
});

test("what all hear wrong is shared", () => {
  const dead = ["position 1", "position 2", "position 3"].map((position) =>
    found(position, "left", ["nothing"]),
  );
  expect(trunkSound(after(...dead))).toBeLessThan(0.5);
});
