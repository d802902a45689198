import Papa from "papaparse";
import { describe, expect, test } from "vitest";
import { neverCentred } from "#core/checks/balance.ts";
import { csvOf, guarded } from "#core/report/csv.ts";
import { sheetOf } from "#core/report/session-sheet.ts";
import { fromHeadphoneSocket } from "#core/rig/rigs.ts";
import { add } from "#core/session/log.ts";
import { evening, evenSaid } from "#tests/support/sessions.ts";
import { earSaid, ownKnobsSaid, sharedKnobs } from "#ui/screens/sheet-gear-words.ts";
import { rowsOf } from "#ui/screens/sheet-rows.ts";
import { earsSaid, notTestedSaid, sayerOf } from "#ui/screens/sheet-words.ts";
import { words as english } from "#ui/words/english.ts";
import { words as german } from "#ui/words/german.ts";

const read = (text: string) =>
  Papa.parse<string[]>(text.replace(/^\uFEFF/, ""), { delimiter: ",", newline: "\r\n" }).data;

const told = (log: ReturnType<typeof evening>, tongue: "en" | "de" = "en") => {
  const sheet = sheetOf(log);
  if (sheet === undefined) throw new Error("there is no sheet");
  const sayer = sayerOf(sheet, tongue === "en" ? english : german);
  return { sheet, sayer, rows: rowsOf(sheet, sayer) };
};

describe.each(["en", "de"] as const)("in %s", (tongue) => {
  const { rows } = told(evening(8), tongue);

  test("every row is as wide as the first and comes back as it was", () => {
    const back = read(csvOf(rows)).slice(0, -1);
    expect(back).toEqual(
      rows.map((row) =>
        row.map((one) => (typeof one === "string" ? guarded(one) : `${one ?? ""}`)),
      ),
    );
    expect(new Set(back.map((row) => row.length)).size).toBe(1);
    expect(back.flat().join(" ")).not.toMatch(/undefined|NaN|Infinity|\[object/);
  });

  test("numbers are numbers whatever the language writes", () => {
    const levels = rows.map((row) => row[6]).filter((one) => typeof one === "number");
    expect(levels).toEqual([-41, -41, -41, -41, -41, -41]);
  });
});

describe("noises and levels", () => {
  const { rows } = told(evenSaid(8));
  const about = (kind: string) => rows.filter(([one]) => one === kind);

  test("each noise has its row, with how sure that is, and with what was done since", () => {
    expect(about("noise").map((row) => [row[1], row[3], row[5]])).toEqual([
      ["1 host", "hiss", 99],
      ["2 reader", "distortion", 95],
    ]);
    const [, second] = about("noise").map((row) => row[4]);
    expect(second).toMatch(/driver of headphones 2 .*; since then: seen to: headphones 2; not/);
    expect(about("not tested").map((row) => row[4])).toContain(
      "Hum, crackle and distortion; hiss, except at 1 host",
    );
  });

  test("each position has its knobs from the source on, and its level as three numbers", () => {
    const [first, second] = about("position").map((row) => row.slice(12));
    const shared = "laptop, phones at 8.0; mixer, phones at 5.0";
    expect(first?.[0]).toBe(`${shared}; amplifier, output 1 at 2.0`);
    const [level, low, high] = (first?.slice(1) ?? []).map(Number);
    expect(low).toBeLessThan(level ?? 0);
    expect(high).toBeGreaterThan(level ?? 0);
    expect(second?.[0]).toBe(`${shared}; amplifier, output 2 at 2.3`);
    expect(second?.slice(1)).toEqual([undefined, undefined, undefined]);
  });

  test("in German as well", () => {
    const { sheet, sayer } = told(evenSaid(8), "de");
    const [first] = sheet.seats;
    expect(first && ownKnobsSaid(sayer, first, sharedKnobs(sheet.seats))).toMatch(
      /^Verstärker, Ausgang 1 auf 2,0$/,
    );
    expect(first && earSaid(sayer, first)).toMatch(/^\d+ dB \(\d+–\d+\)$/);
    expect(notTestedSaid(sayer, sheet)).toContain(
      "Brummen, Knistern und Verzerrung; Rauschen, außer bei: 1 host",
    );
  });
});

test("a position named as a formula stays a name", () => {
  const rig = fromHeadphoneSocket("=1+1", ['"quoted", seat', "second"]);
  const named = {
    ...rig,
    positions: rig.positions.map((one) => ({ ...one, name: `=${one.name}` })),
  };
  const { rows } = told(add([], { entry: "drawing", rig: named }, 0));
  const back = read(csvOf(rows));
  expect(back.flat().filter((one) => /^[=+@]/.test(one))).toEqual([]);
  expect(back.flat()).toContain("'=1+1");
});

test("each fault that cannot be heard has its row; on paper parts in a row of one kind are said at once", () => {
  const { sheet, sayer, rows } = told(evening(8));
  const parts = new Set(rows.filter(([kind]) => kind === "not tested").map((row) => row[1]));
  for (const { part } of sheet.unheard) expect(parts).toContain(part);
  expect(notTestedSaid(sayer, sheet).join("\n")).toContain("headphones 1 to headphones 8 (2 each)");
});

test("what could not be pushed to the middle is said", () => {
  const balance = { check: "balance", position: "position 1" } as const;
  const { sheet, sayer } = told(
    add(
      evening(6),
      { entry: "finding", finding: { asked: balance, results: [[neverCentred]] } },
      0,
    ),
  );
  const [seat] = sheet.seats;
  expect(seat && earsSaid(sayer, seat)).toBe("never in the middle");
});
