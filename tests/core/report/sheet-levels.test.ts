import { describe, expect, test } from "vitest";
import { usualProgramme } from "#core/level/stages.ts";
import { reckoned, wayTo } from "#core/level/way.ts";
import { sheetOf } from "#core/report/session-sheet.ts";
import { build } from "#core/rig/rig.ts";
import { fromHeadphoneSocket } from "#core/rig/rigs.ts";
import { compared, hasChanged } from "#core/session/compared.ts";
import { add, type Log, rigIn, type Said } from "#core/session/log.ts";
import { tomorrowOf } from "#core/session/tomorrow.ts";
import { derived, well } from "#tests/support/entries.ts";
import { saidOf } from "#tests/support/sessions.ts";

const at = "position 1";
const empty = add(
  [],
  { entry: "drawing", rig: fromHeadphoneSocket("Tallow Hall", ["host", "reader"]) },
  0,
);
const seat = (log: Log) => sheetOf(log)?.seats.find(({ id }) => id === at);
const knobs = {
  laptop: { "phones: knob": 0.8 },
  mixer: { "phones: knob": 0.5 },
  amplifier: { "output 1: knob": 0.23, "output 2: knob": 0.4 },
};
const typed = { amplifier: { gain: 12 } };
const known = saidOf(saidOf(empty, knobs), typed);
const move = (log: Log, said: Extract<Said, { entry: "move" }>["move"]): Log =>
  add(log, { entry: "move", move: said }, 0);

test("nothing where nobody said anything of levels", () => {
  expect(seat(empty)).toMatchObject({ knobs: [], ear: undefined });
});

test("the knobs that were set, along each position's own way", () => {
  const amplifier = { part: "amplifier", socket: "output 1", up: 0.23 };
  expect(seat(saidOf(empty, knobs))?.knobs).toEqual([
    { part: "laptop", socket: "phones", up: 0.8 },
    { part: "mixer", socket: "phones", up: 0.5 },
    amplifier,
  ]);
  expect(seat(saidOf(empty, { amplifier: knobs.amplifier }))?.knobs).toEqual([amplifier]);
  const other = sheetOf(known)
    ?.seats.find(({ id }) => id === "position 2")
    ?.knobs.at(-1);
  expect(other).toEqual({ part: "amplifier", socket: "output 2", up: 0.4 });
});

describe("how loud it should be", () => {
  test("is as the screen of levels reckons it, with its spread", () => {
    const rig = rigIn(known);
    const way = rig && wayTo(build(rig), at);
    expect(way && seat(known)?.ear).toEqual(way && reckoned(way, usualProgramme).level);
    const { low = 0, value = 0, high = 0 } = seat(known)?.ear ?? {};
    expect(low).toBeLessThan(value);
    expect(value).toBeLessThan(high);
  });

  test("is not said where no number was typed, nor where a knob is a guess", () => {
    expect(seat(saidOf(empty, knobs))?.ear).toBeUndefined();
    expect(seat(saidOf(empty, typed))?.ear).toBeUndefined();
    const { mixer: _, ...some } = knobs;
    expect(seat(saidOf(saidOf(empty, some), typed))?.ear).toBeUndefined();
    const sensitive = { "headphones 1": { sensitivity: 104 } };
    expect(seat(saidOf(saidOf(empty, knobs), sensitive))?.ear).toBeDefined();
  });
});

describe("of what was put in since the rig was drawn nothing is known", () => {
  test("another amplifier: its knob is not told, and no level", () => {
    for (const moved of [
      move(known, { move: "replaced", place: "amplifier" }),
      move(known, { move: "known good in", part: "amplifier" }),
    ])
      expect(seat(moved)).toMatchObject({
        knobs: [{ part: "laptop" }, { part: "mixer" }],
        ear: undefined,
      });
  });

  test("other headphones: the knobs stand as they did, how loud it is nobody knows", () => {
    const moved = move(known, { move: "replaced", place: "headphones 1" });
    expect(seat(moved)?.knobs).toHaveLength(3);
    expect(seat(moved)?.ear).toBeUndefined();
  });

  test("once it is drawn again it is as drawn", () => {
    const moved = move(known, { move: "replaced", place: "amplifier" });
    const again = saidOf(moved, { amplifier: { "output 1: knob": 0.31 } });
    expect(seat(again)?.knobs.at(-1)?.up).toBe(0.31);
    expect(seat(again)?.ear).toBeDefined();
  });
});

describe("from one session to the next", () => {
  const heard = (log: Log) => well(log, at);

  test("a rig whose knobs stand otherwise, or of which numbers were typed, is the same rig and as before", () => {
    const then = heard(saidOf(empty, knobs));
    const turned = saidOf(known, { amplifier: { "output 1: knob": 0.9 } });
    for (const now of [heard(empty), heard(turned)]) {
      const both = compared(then, now);
      expect(both).toMatchObject({ another: false, gone: [], come: [] });
      expect(both?.positions.map(({ position }) => position)).toHaveLength(2);
      expect(both?.positions.filter(hasChanged)).toEqual([]);
      expect(both?.positions[0]).toMatchObject({ levels: [], was: { state: "healthy" } });
    }
  });

  test("so it is where the tapes are new, and positions are known by what is worn there", () => {
    const rig = rigIn(known);
    if (rig === undefined) throw new Error("it was drawn");
    const positions = rig.positions.map((one) => ({ ...one, name: `new ${one.name}` }));
    const now = add([], { entry: "drawing", rig: { ...rig, positions } }, 0);
    expect(compared(empty, now)).toMatchObject({ another: false, gone: [], come: [] });
  });

  test("knobs set while it went on take no answer away", () => {
    const log = saidOf(heard(empty), knobs);
    expect(derived(log).leftOut).toEqual([]);
    expect(derived(log).state(at)).toBe("healthy");
  });

  test("tomorrow begins with them", () => {
    const log = tomorrowOf(move(known, { move: "replaced", place: "headphones 2" })).reduce<Log>(
      (so, one) => add(so, one, 0),
      [],
    );
    expect(rigIn(log)).toEqual(rigIn(known));
    expect(seat(log)).toMatchObject({ knobs: seat(known)?.knobs, ear: seat(known)?.ear });
  });
});
