import { describe, expect, test } from "vitest";
import { run } from "#cli/run.ts";
import { neverCentred } from "#core/checks/balance.ts";
import { positionCopied } from "#core/drawing/copying.ts";
import type { Edited } from "#core/drawing/edited.ts";
import { partNamed, positionWanting } from "#core/drawing/names.ts";
import { positionRemoved } from "#core/drawing/removing.ts";
import { sheetOf } from "#core/report/session-sheet.ts";
import type { Rig } from "#core/rig/rig.ts";
import { builtInRigs, straightIn } from "#core/rig/rigs.ts";
import { starts } from "#core/rig/starts.ts";
import { caseText } from "#core/session/case.ts";
import { compared } from "#core/session/compared.ts";
import { add, type Log, type Said } from "#core/session/log.ts";
import { readFile } from "#core/session/read-case.ts";
import { tomorrowOf } from "#core/session/tomorrow.ts";
import { derived } from "#tests/support/entries.ts";
import { starts as words } from "#ui/words/english/starts.ts";

const [rig = straightIn] = builtInRigs;
const session = (...said: readonly Said[]): Log =>
  said.reduce<Log>((log, one) => add(log, one, 1), add([], { entry: "drawing", rig }, 1));
const further = (log: Log, ...said: readonly Said[]): Log =>
  said.reduce<Log>((so, one) => add(so, one, 1), log);
const heard = (
  position: string,
  check: "left" | "right" | "pair",
  ...results: string[][]
): Said => ({
  entry: "finding",
  finding: { asked: { check, position }, results },
});

function drawn(log: Log, how: (rig: Rig) => Edited): Log {
  const edited = how(derived(log).rig);
  if ("refusal" in edited) throw new Error(JSON.stringify(edited.refusal));
  return add(log, { entry: "drawing", rig: edited.rig }, 1);
}

/** One knock on the left sounds in both ears, and what is in phase is gone, as where a return is lost; then another set heals it. */
const cured = session(
  heard("position 3", "left", ["all round"]),
  heard("position 3", "right", ["all round"]),
  heard("position 3", "pair", ["nothing"], ["all round"]),
  { entry: "move", move: { move: "replaced", place: "headphones 3" } },
  heard("position 3", "left", ["left ear"]),
  heard("position 3", "right", ["right ear"]),
  heard("position 3", "pair", ["middle"], ["all round"]),
);
const blue = (log: Log): Log => drawn(log, (now) => partNamed(now, "headphones 3", "blue set"));
const withoutFour = (log: Log): Log => drawn(log, (now) => positionRemoved(now, "position 4"));

describe("the sheet of a rig that was drawn anew", () => {
  test("has what was found under the name its part has now", () => {
    const [before] = sheetOf(cured)?.found ?? [];
    const [after] = sheetOf(blue(cured))?.found ?? [];
    expect(before?.fault.part).toBe("headphones 3");
    expect(after).toMatchObject({ end: "mended", fault: { part: "blue set" } });
    expect(after?.mended?.moves).toEqual([{ move: "replaced", place: "blue set" }]);
  });

  test("has what was found elsewhere where a position was taken out", () => {
    const found = (log: Log) => sheetOf(log)?.found.map(({ fault, end }) => [fault.id, end]);
    const other = further(session(heard("position 4", "left", ["nothing"])), ...cured.slice(1));
    expect(found(withoutFour(other))).toEqual(found(cured));
  });
});

test("tomorrow's rig has moves under the names of today", () => {
  const changed = session({
    entry: "move",
    move: { move: "exchanged", parts: ["headphones 3", "headphones 4"] },
  });
  const [first] = tomorrowOf(blue(changed));
  const worn = first?.entry === "drawing" ? first.rig.positions.map(({ wears }) => wears) : [];
  expect(worn.slice(2, 4)).toEqual(["headphones 4", "blue set"]);
});

describe("our own file", () => {
  const gone = withoutFour(
    blue(
      further(cured, heard("position 4", "left", ["nothing"]), {
        entry: "absent",
        position: "position 4",
      }),
    ),
  );

  test("comes back whole after a part was named anew and a position removed", () => {
    const read = readFile(caseText(gone, { id: "1-1", written: 1 }));
    expect(read).toMatchObject({ read: true, lost: [], log: gone });
  });

  test("is worked out by the command, which warns of what is no longer drawn", async () => {
    const text = caseText(gone, { id: "1-1", written: 1 });
    const printed = await run(["-"], async () => ({ text }));
    expect(printed.code).toBe(0);
    expect(printed.err.match(/warning: this speaks of what is no longer drawn/g)).toHaveLength(2);
  });
});

test("nobody is absent at a new position that has the number of one that is gone", () => {
  const away = session({ entry: "absent", position: "position 5" });
  const gone = drawn(away, (now) => positionRemoved(now, "position 5"));
  const log = drawn(gone, (now) => positionCopied(now, "position 3"));
  const ids = derived(log).rig.positions.map(({ id }) => id);
  expect(derived(away).state("position 5")).toBe("absent");
  expect(ids).toContain("position 5");
  expect(derived(log).state("position 5")).toBe("not heard");
});

describe("the sheet has of balance", () => {
  const pushed = (...answers: string[]): Said => ({
    entry: "finding",
    finding: { asked: { check: "balance", position: "position 1" }, results: [answers] },
  });
  const balance = (one: Said) => sheetOf(session(one))?.seats[0]?.balance;

  test("nothing where somebody could not tell", () => {
    const all = [0, 2, 4].map((up) =>
      up === 0 ? "in the middle as it is" : `in the middle with the right up ${up} dB`,
    );
    expect(balance(pushed(...all))).toBeUndefined();
    expect(balance(pushed("in the middle as it is", neverCentred))).toBeUndefined();
  });

  test("the middle between two classes", () => {
    const two = ["in the middle as it is", "in the middle with the right up 2 dB"];
    expect(balance(pushed(...two))).toBe(1);
  });
});

describe("what is wanted at a position", () => {
  const mono = drawn(session(), (now) => positionWanting(now, "position 3", "mono"));

  test("is wanted at one like it, on the sheet, and beside an earlier session", () => {
    const two = drawn(mono, (now) => positionCopied(now, "position 3"));
    expect(derived(two).rig.positions.filter(({ wants }) => wants === "mono")).toHaveLength(2);
    expect(sheetOf(mono)?.seats[2]?.wants).toBe("mono");
    const change = compared(session(), mono)?.positions[2];
    expect([change?.was?.wants, change?.is?.wants]).toEqual([undefined, "mono"]);
  });

  test("is stereo again once that is said", () => {
    const stereo = drawn(mono, (now) => positionWanting(now, "position 3"));
    expect(derived(stereo).rig).toEqual(rig);
  });
});

describe("two sessions", () => {
  const room = (wanted: string): Log => {
    const made = starts.find(({ key }) => key === wanted)?.make(words);
    if (made === undefined) throw new Error("there is no such start");
    return add([], { entry: "drawing", rig: made }, 1);
  };

  test("of two rooms are compared where a name on a tape is the same, and nowhere else", () => {
    const both = compared(session(), room("podcast table"));
    const met = both?.positions.filter(({ was, is }) => was !== undefined && is !== undefined);
    expect(met?.map(({ name }) => name)).toEqual(["1 host"]);
  });

  test("of two rigs are not compared, whatever their positions are numbered", () => {
    expect(compared(session(), room("rehearsal room"))).toEqual({
      another: true,
      positions: [],
      gone: [],
      come: [],
    });
  });

  test("of one rig are, whatever its parts are called now", () => {
    const both = compared(cured, blue(cured));
    expect(both).toMatchObject({ another: false, gone: [], come: [] });
    expect(both?.positions.filter(({ otherwise }) => otherwise)).toEqual([]);
  });
});
