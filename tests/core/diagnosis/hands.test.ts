import { describe, expect, test } from "vitest";
import { handsAt } from "#core/diagnosis/hands.ts";
import type { Move } from "#core/rig/moves.ts";
import { wornAt } from "#core/rig/rig.ts";
import { builtInRigs, fromHeadphoneSocket } from "#core/rig/rigs.ts";
import { standIn } from "#core/rig/stand-ins.ts";
import { add, type Log } from "#core/session/log.ts";
import { at, derived } from "#tests/support/entries.ts";

const seats = fromHeadphoneSocket("three", ["one", "two", "three"]);
const drawn = (rig: typeof seats): Log => add([], { entry: "drawing", rig }, 0);
const movesAt = (log: Log, position: string): readonly Move[] =>
  handsAt(derived(log).evidence.era, position).flatMap(({ moves }) => moves);

test.for(builtInRigs)("whatever somebody says they did is understood: $name", (rig) => {
  const [first] = rig.positions;
  const position = first?.id ?? "";
  const log = at(drawn(rig), position, "left", "nothing");
  const before = derived(log).standing(position).trouble;
  expect(before).toBeGreaterThan(0.8);
  for (const move of movesAt(log, position)) {
    const after = at(add(log, { entry: "move", move }, 0), position, "left", "left ear");
    expect(derived(after).standing(position).trouble, JSON.stringify(move)).toBeLessThan(before);
  }
});

describe("what may have been done", () => {
  test("nothing is offered twice, and all of it where it was done", () => {
    const hands = handsAt(derived(drawn(seats)).evidence.era, "position 1");
    const keys = hands.flatMap(({ moves }) => moves.map((move) => JSON.stringify(move)));
    expect(new Set(keys).size).toBe(keys.length);
    const worn = hands.find(({ part }) => part === wornAt(seats, "position 1"));
    expect(worn?.moves.map(({ move }) => move)).toEqual(
      expect.arrayContaining(["plugged anew", "known good in", "turned round", "exchanged"]),
    );
  });

  test("what was laid aside can be put back, and only then", () => {
    const part = wornAt(seats, "position 1");
    const log = add(drawn(seats), { entry: "move", move: { move: "known good in", part } }, 0);
    expect(movesAt(drawn(seats), "position 1")).not.toContainEqual({ move: "put back", part });
    expect(movesAt(log, "position 1")).toContainEqual({ move: "put back", part });
  });

  test("in-ears are neither turned round nor exchanged", () => {
    const rig = standIn({ feed: "belt pack", listeners: 3 });
    const [first] = rig.positions;
    const names = movesAt(drawn(rig), first?.id ?? "").map(({ move }) => move);
    expect(names).toContain("replaced");
    expect(names).not.toContain("turned round");
    expect(names).not.toContain("exchanged");
  });
});
