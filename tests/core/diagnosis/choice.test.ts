import { describe, expect, test } from "vitest";
import { mendsAt } from "#core/diagnosis/mends.ts";
import { trialsAt } from "#core/diagnosis/trials.ts";
import { type Rig, wornAt } from "#core/rig/rig.ts";
import { fromHeadphoneSocket, straightIn } from "#core/rig/rigs.ts";
import type { Derived } from "#core/session/derive.ts";
import { derive } from "#core/session/derive.ts";
import { add, type Log } from "#core/session/log.ts";
import { at, derived, inMono, well } from "#tests/support/entries.ts";

const seats = fromHeadphoneSocket("three", ["one", "two", "three"]);
const inEars: Rig = {
  ...seats,
  parts: seats.parts.map((part) =>
    part.id.startsWith("headphones")
      ? { id: part.id, kind: "in-ears", settings: { size: "6.35 mm" } }
      : part,
  ),
};
const drawn = (rig: Rig): Log => add([], { entry: "drawing", rig }, 0);

/** One ear is dead at a position, and the rest is heard. */
const oneDeadEar = (log: Log, position: string): Log =>
  at(
    at(at(log, position, "left", "nothing"), position, "right", "right ear"),
    position,
    "pair",
    "right ear",
    "right ear",
  );
const chosen = ({ standing }: Derived, position: string) => standing(position).choice;

describe("what next", () => {
  test("starts with the cheap, and says how long it will be and what else was weighed", () => {
    const choice = chosen(
      derived(oneDeadEar(well(drawn(seats), "position 2"), "position 1")),
      "position 1",
    );
    expect(choice?.best?.cost).toBeLessThanOrEqual(30);
    expect(choice?.seconds).toBeGreaterThan(10);
    expect(choice?.seconds).toBeLessThan(300);
    const times = choice?.others.map(({ seconds }) => seconds) ?? [];
    expect(times.length).toBeGreaterThan(2);
    for (const seconds of times)
      expect(seconds).toBeGreaterThanOrEqual((choice?.seconds ?? 0) - 1e-6);
  });

  test("one dead ear at one seat where the neighbour is well: nothing that all share is replaced first", () => {
    const choice = chosen(
      derived(oneDeadEar(well(drawn(seats), "position 2"), "position 1")),
      "position 1",
    );
    const { doing } = choice?.best ?? {};
    if (doing?.do === "mend" && "place" in doing.move)
      expect(doing.move.place).not.toMatch(/lead|mixer|laptop/);
  });

  test("headphones may be turned round, and exchanged with those of a seat that is well", () => {
    const { model, evidence } = derived(well(drawn(seats), "position 2"));
    const moves = trialsAt(model, evidence.era, "position 1", ["position 2"]).map(
      ({ move }) => move,
    );
    expect(moves).toEqual([
      { move: "turned round", position: "position 1" },
      { move: "exchanged", parts: ["headphones 1", "headphones 2"] },
    ]);
  });

  test("what goes into an ear is never exchanged or turned round", () => {
    const { model, evidence } = derived(well(drawn(inEars), "position 2"));
    expect(trialsAt(model, evidence.era, "position 1", ["position 2"])).toEqual([]);
    expect(
      mendsAt(evidence.era, "position 1", new Set()).some(({ move }) => move.move === "exchanged"),
    ).toBe(false);
  });

  test("headphones that were turned round are turned back once that was heard", () => {
    const turned = at(
      add(
        oneDeadEar(drawn(seats), "position 1"),
        { entry: "move", move: { move: "turned round", position: "position 1" } },
        0,
      ),
      "position 1",
      "left",
      "nothing",
    );
    expect(derived(turned).standing("position 1").advice).toMatchObject({
      advice: "do",
      move: { move: "turned round", position: "position 1" },
      cures: false,
    });
  });

  test("what cannot be done here, and what was done, is not proposed again", () => {
    let log = oneDeadEar(well(drawn(seats), "position 2"), "position 1");
    const met: string[] = [];
    for (let step = 0; step < 8; step++) {
      const { advice } = derived(log).standing("position 1");
      if (advice.advice !== "do") break;
      const key = JSON.stringify(advice.move);
      expect(met).not.toContain(key);
      met.push(key);
      log = add(log, { entry: "cannot", move: advice.move }, 0);
    }
    expect(met.length).toBeGreaterThan(0);
  });

  test("a sure verdict has its repair, and another where that is not possible here", () => {
    const look = { check: "look", place: "laptop" } as const;
    const results = [["laptop / settings / balance hard right"]];
    const sure = add(
      oneDeadEar(drawn(straightIn), "position 1"),
      { entry: "finding", finding: { asked: look, results } },
      0,
    );
    const { advice, leading } = derived(sure).standing("position 1");
    if (advice.advice !== "verdict") throw new Error("there is no verdict");
    expect(advice).toMatchObject({ sure: true, fits: true });
    const first = advice.mend;
    expect(first?.seconds).toBeGreaterThan(0);
    expect(first?.move).toMatchObject({ place: leading?.group.faults[0]?.place });
    if (first === undefined) throw new Error("there is no repair");
    const cannot = add(sure, { entry: "cannot", move: first.move }, 0);
    const { advice: then } = derived(cannot).standing("position 1");
    expect(then).toMatchObject({ advice: "verdict", sure: true });
    expect(then.advice === "verdict" && then.mend?.move).not.toEqual(first.move);
  });

  test("a good set that works is the culprit found: the old one is named, and where it is", () => {
    const log = well(
      add(
        oneDeadEar(well(drawn(seats), "position 2"), "position 1"),
        { entry: "move", move: { move: "known good in", part: wornAt(seats, "position 1") } },
        0,
      ),
      "position 1",
    );
    const { advice, culprits } = derived(log).standing("position 1");
    expect(advice.advice).toBe("healthy");
    expect(culprits[0]?.group.faults[0]?.part).toBe("headphones 1");
    expect(culprits.reduce((sum, { probability }) => sum + probability, 0)).toBeGreaterThan(0.9);
  });

  test("a mono feed is asked about before it is called a fault", () => {
    const mono = ["position 1", "position 2"].reduce(inMono, drawn(seats));
    const asked = [];
    let log = mono;
    for (let step = 0; step < 6; step++) {
      const { advice } = derive(log)?.standing("position 1") ?? {};
      if (advice?.advice !== "ask" || advice.option.asked.check !== "look") break;
      asked.push(advice.option.asked.place);
      log = add(
        log,
        {
          entry: "finding",
          finding: { asked: advice.option.asked, results: [["as it should be"]] },
        },
        0,
      );
    }
    expect(asked).toContain("client");
  });
});
