import { describe, expect, test } from "vitest";
import type { Move } from "#core/rig/moves.ts";
import { builtInRigs, straightIn } from "#core/rig/rigs.ts";
import { derive } from "#core/session/derive.ts";
import { add, type Log, type Said } from "#core/session/log.ts";
import { tomorrowOf } from "#core/session/tomorrow.ts";

const [rig = straightIn] = builtInRigs;
const session = (...said: readonly Said[]): Log =>
  said.reduce<Log>((log, one) => add(log, one, 0), add([], { entry: "drawing", rig }, 0));
const move = (one: Move): Said => ({ entry: "move", move: one });

const rigOf = (log: Log) => {
  const [drawing] = tomorrowOf(log);
  if (drawing?.entry !== "drawing") throw new Error("nothing was drawn");
  return drawing.rig;
};

describe("tomorrow's start", () => {
  test("is the rig as drawn where nothing was moved, with its name and nothing that was found", () => {
    const log = session(
      { entry: "titled", name: "Tallow Hall", who: "the late shift" },
      {
        entry: "finding",
        finding: { asked: { check: "left", position: "position 1" }, results: [["left ear"]] },
      },
    );
    expect(tomorrowOf(log)).toEqual([
      { entry: "drawing", rig },
      { entry: "titled", name: "Tallow Hall", who: "the late shift" },
    ]);
  });

  test("has parts that changed places where they are now", () => {
    const now = rigOf(
      session(move({ move: "exchanged", parts: ["headphones 1", "headphones 2"] })),
    );
    const worn = now.positions.map(({ wears }) => wears);
    expect(worn.slice(0, 2)).toEqual(["headphones 2", "headphones 1"]);
  });

  test("has what stands in as the part it stands in for, and nothing laid aside", () => {
    const now = rigOf(session(move({ move: "known good in", part: "headphones 3" })));
    expect(now).toEqual(rig);
  });

  test("has nothing turned round on a head, and controls as they were set", () => {
    const turned = move({ move: "turned round", position: "position 1" });
    expect(rigOf(session(turned))).toEqual(rig);
  });

  test("takes no move that was taken back", () => {
    const log = session(move({ move: "exchanged", parts: ["headphones 1", "headphones 2"] }), {
      entry: "taken back",
      taken: "2",
    });
    expect(rigOf(log)).toEqual(rig);
  });

  test("can be worked out like any other rig", () => {
    const moves: readonly Move[] = [
      { move: "known good in", part: "headphones 3" },
      { move: "exchanged", parts: ["headphones 1", "headphones 2"] },
      { move: "replaced", place: "headphones 4" },
    ];
    const log = tomorrowOf(session(...moves.map(move))).reduce<Log>(
      (so, one) => add(so, one, 1),
      [],
    );
    expect(derive(log)?.state("position 3")).toBe("not heard");
  });

  test("is nothing where there is no rig", () => {
    expect(tomorrowOf([])).toEqual([]);
  });
});
