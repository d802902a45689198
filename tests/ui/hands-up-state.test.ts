import { describe, expect, test } from "vitest";
import { minutes } from "#core/report/phrases.ts";
import { builtInRigs, straightIn } from "#core/rig/rigs.ts";
import { derive } from "#core/session/derive.ts";
import { add, type Log } from "#core/session/log.ts";
import { pairOrder } from "#core/signals/burst-pair.ts";
import { english } from "#core/words/english.ts";
import { pointsAt } from "#ui/screens/bench-pointing.ts";
import {
  expectedNow,
  firstTurn,
  heardBy,
  seatsToPass,
  tapped,
  turns,
} from "#ui/screens/hands-up-state.ts";

const [rig = straightIn] = builtInRigs;
const seats = rig.positions.map(({ id }) => id);
const begun = add([], { entry: "drawing", rig }, 0);

describe("a pass over all seats", () => {
  test("is offered for more than two that are not heard", () => {
    const offered = (log: Log) => {
      const derived = derive(log);
      return derived && seatsToPass(derived);
    };
    expect(offered(begun)).toEqual(seats);
    const [one, two, three] = seats.map((seat) => heardBy([seat], firstTurn));
    const all = (...said: readonly (typeof one)[]) =>
      said.flatMap((some) => some ?? []).reduce<Log>((log, entry) => add(log, entry, 0), begun);
    expect(offered(all(one, two))).toEqual(seats.slice(2));
    expect(offered(all(one, two, three))).toEqual([]);
  });

  test("finds every seat healthy that was never tapped, and enters nothing of the others", () => {
    const [, second = ""] = seats;
    const pass = tapped(firstTurn, second);
    const said = heardBy(seats, pass);
    expect(said).toHaveLength(3 * (seats.length - 1));
    const derived = derive(said.reduce<Log>((log, one) => add(log, one, 0), begun));
    expect(seats.map((seat) => derived?.state(seat))).toEqual(
      seats.map((seat) => (seat === second ? "not heard" : "healthy")),
    );
  });

  test("a second tap takes the first one back", () => {
    expect(tapped(tapped(firstTurn, "position 1"), "position 1").differs.size).toBe(0);
  });

  test("says where to point in the order of the bursts", () => {
    const orders = [1, 2, 3, 4, 5, 6, 7, 8].map((seed) => {
      const [first] = expectedNow({ ...firstTurn, turn: 2, seed });
      return first === (pairOrder(seed) === "in phase first" ? "middle" : "all round");
    });
    expect(orders).toEqual(orders.map(() => true));
  });
});

test("the bench's own people point as a listener would", () => {
  const at = (...gains: readonly [number, number, number, number]) =>
    turns.map(({ check }) => pointsAt(check, gains));
  expect(at(1, 0, 0, 1)).toEqual(turns.map(({ expected }) => expected));
  expect(at(0, 1, 1, 0)).toEqual([["right ear"], ["left ear"], ["middle", "all round"]]);
  expect(at(0, 0, 0, 1)).toEqual([["nothing"], ["right ear"], ["right ear", "right ear"]]);
});

test.each([
  [12, "less than a minute"],
  [60, "about 1 min"],
  [61, "about 1½ min"],
  [90, "about 1½ min"],
  [150.2, "about 3 min"],
])("%d s are said as %s", (seconds, text) => {
  expect(minutes(english, seconds)).toBe(text);
});
