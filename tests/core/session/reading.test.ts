import { describe, expect, test } from "vitest";
import { straightIn } from "#core/rig/rigs.ts";
import { add, type Said } from "#core/session/log.ts";
import { mendedLog } from "#core/session/mended.ts";

const position = "position 1";
const moves = [
  { move: "set right", place: "mixer" },
  { move: "replaced", place: "feed lead" },
  { move: "plugged anew", part: "feed lead", plug: "far" },
  { move: "exchanged", parts: ["headphones 1", "headphones 2"] },
  { move: "known good in", part: "headphones 1" },
  { move: "put back", part: "headphones 1" },
  { move: "moved", part: "headphones 1", plug: "plug", into: "amplifier", socket: "output 2" },
  { move: "turned round", position },
  { move: "set", part: "mixer", control: "balance", value: -1 },
] as const;

const gains = [
  [1, 0],
  [0, 0],
  [0, 0.1],
  [1, 0],
] as const;
const findings: Extract<Said, { entry: "finding" }>["finding"][] = [
  { asked: { check: "pair", position }, results: [["middle"], ["all round", "nothing"]] },
  { asked: { check: "left", position }, results: [["left ear"]], otherTimes: [["nothing"]] },
  { asked: { check: "complaint", position }, results: [["no voice"]] },
  { asked: { check: "look", place: "mixer" }, results: [["all as it should be"]] },
  {
    asked: { check: "twist", part: "headphones 1", plug: "plug" },
    results: [["it comes and goes"]],
  },
  { asked: { check: "continuity", part: "feed lead", from: "near.tip", to: "far.tip" }, ohms: 0.4 },
  { asked: { check: "continuity", part: "feed lead", from: "near.tip", to: "far.tip" } },
  { asked: { check: "matrix", position }, gains, error: 0.01 },
];

const said: readonly Said[] = [
  { entry: "drawing", rig: straightIn },
  ...moves.map((move): Said => ({ entry: "move", move })),
  ...moves.map((move): Said => ({ entry: "cannot", move })),
  ...findings.map((finding): Said => ({ entry: "finding", finding })),
  { entry: "finding", finding: { asked: { check: "left", position }, results: [[]] }, level: -40 },
  { entry: "absent", position },
  { entry: "titled", name: "Tallow Hall story evening", who: "the late shift" },
  { entry: "taken back", taken: "2" },
];

const readLog = (text: string) => {
  const { log, lost } = mendedLog(JSON.parse(text));
  return lost.length === 0 ? log : undefined;
};

const bare = (one: Said) => JSON.stringify([{ id: "1", at: 1, ...one }]);

test("a log with every kind of entry comes back as it was", () => {
  const log = said.reduce((so, one) => add(so, one, 7), [] as ReturnType<typeof add>);
  expect(mendedLog(JSON.parse(JSON.stringify(log)))).toEqual({ log, lost: [] });
});

/** What an object says, each part of it left out in turn. */
const holes = (whole: object, kept: readonly string[]) =>
  Object.keys(whole)
    .filter((name) => !kept.includes(name))
    .map((name) => Object.fromEntries(Object.entries(whole).filter(([key]) => key !== name)));

describe("what lacks a part is not understood", () => {
  test.each(moves)("$move", (move) => {
    for (const entry of ["move", "cannot"] as const) {
      for (const hole of holes(move, [])) {
        expect(readLog(bare({ entry, move: hole } as never)), JSON.stringify(hole)).toBeUndefined();
      }
    }
  });

  test.each(findings)("$asked.check", (finding) => {
    for (const asked of holes(finding.asked, []))
      expect(readLog(bare({ entry: "finding", finding: { ...finding, asked } } as never))).toBe(
        undefined,
      );
    for (const hole of holes(finding, ["otherTimes", "ohms"]))
      expect(readLog(bare({ entry: "finding", finding: hole } as never))).toBeUndefined();
  });

  test.each([
    { move: "danced", place: "mixer" },
    { move: "toString", place: "mixer" },
    { move: "exchanged", parts: ["headphones 1"] },
    { move: "set", part: "mixer", control: "balance", value: "left" },
  ])("%o", (move) => {
    expect(readLog(bare({ entry: "move", move } as never))).toBeUndefined();
  });

  test.each([
    { asked: { check: "left", position }, results: [["left ear"]], otherTimes: ["nothing"] },
    { asked: { check: "matrix", position }, gains: gains.slice(1), error: 0.01 },
    { asked: { check: "matrix", position }, gains, error: -0.01 },
    { asked: { check: "matrix", position }, gains, error: 0.01, results: [["left ear"]] },
    { asked: { check: "continuity", part: "x", from: "a", to: "b" }, ohms: "0" },
    { asked: { check: "continuity", part: "x", from: "a", to: "b" }, ohms: -1 },
    { asked: { check: "continuity", part: "x", from: "a", to: "b" }, results: [] },
  ])("%o", (finding) => {
    expect(readLog(bare({ entry: "finding", finding } as never))).toBeUndefined();
  });
});

test.each(["constructor", "__proto__", "valueOf", "toString", "hasOwnProperty"])(
  "an entry called %s is not understood, and nothing breaks",
  (entry) => {
    expect(mendedLog([{ entry }]).lost).toEqual([{ place: 1, entry, why: "not understood" }]);
    expect(mendedLog([{ entry: "move", move: { move: entry } }]).lost).toHaveLength(1);
  },
);

test("a time that no date has is not understood", () => {
  expect(readLog('[{"id":"1","at":1e999,"entry":"absent","position":"x"}]')).toBeUndefined();
  expect(readLog('[{"id":"1","at":9e15,"entry":"absent","position":"x"}]')).toBeUndefined();
});
