import fc from "fast-check";
import { expect, test } from "vitest";
import { straightIn } from "#core/rig/rigs.ts";
import { caseText } from "#core/session/case.ts";
import { derive } from "#core/session/derive.ts";
import { add, type Log, type Said } from "#core/session/log.ts";
import { readFile } from "#core/session/read-case.ts";
import { long } from "#tests/support/long.ts";

const position = "position 1";
const about = { id: "1764-7", written: 1764 };

const asked = { check: "matrix", position };
const gains = [
  [1, 0],
  [0, 0],
  [0, 0],
  [1, 0],
];

/** A session of one person's rig that has every kind of entry. */
const small: Log = [
  { entry: "drawing", rig: straightIn },
  { entry: "finding", finding: { asked: { check: "left", position }, results: [["left ear"]] } },
  { entry: "finding", finding: { asked: { check: "look", place: "laptop" }, results: [[]] } },
  { entry: "finding", finding: { asked, gains, error: 0.05 } },
  { entry: "move", move: { move: "known good in", part: "headphones 1" } },
  { entry: "cannot", move: { move: "replaced", place: "headphones 1" } },
  { entry: "move", move: { move: "put back", part: "headphones 1" } },
  { entry: "drawing", rig: { ...straightIn, name: "again" } },
  { entry: "absent", position },
  { entry: "taken back", taken: "9" },
].reduce<Log>((log, one) => add(log, one as Said, 1), []);

const hostile = fc.oneof(
  fc.jsonValue({ maxDepth: 2 }),
  fc.constantFrom<unknown>("constructor", "__proto__", "valueOf", "", "zzz", position, -1, 1e300),
);
const change = fc.record({
  at: fc.nat(),
  how: fc.constantFrom("put", "add", "leave out", "double"),
  key: fc.oneof(fc.string(), fc.constantFrom("__proto__", "constructor", "results", "first")),
  value: hostile,
});

type Anything = Record<string, unknown>;

/** Every object and list in a value, with each key in it. */
const placesIn = (value: unknown): readonly (readonly [Anything, string])[] =>
  typeof value === "object" && value !== null
    ? Object.entries(value).flatMap(([key, inside]) => [
        [value as Anything, key] as const,
        ...placesIn(inside),
      ])
    : [];

/** The text of a session that somebody laid hands on. */
function changed(
  changes: readonly (typeof change extends fc.Arbitrary<infer One> ? One : never)[],
) {
  const one: unknown = JSON.parse(caseText(small, about));
  for (const { at, how, key, value } of changes) {
    const places = placesIn(one);
    const [inside, name] = places[at % places.length] ?? [{}, ""];
    if (how === "put") inside[name] = value;
    else if (how === "leave out") delete inside[name];
    else if (how === "double" && Array.isArray(inside)) inside.push(inside[Number(name)]);
    else
      Object.defineProperty(inside, key, {
        value,
        enumerable: true,
        configurable: true,
        writable: true,
      });
  }
  return JSON.stringify(one);
}

/** Everything that follows from a log, asked for at every position. */
function workedOut(log: Log) {
  const all = derive(log);
  for (const { id } of all?.rig.positions ?? []) expect(all?.state(id)).toBeTypeOf("string");
  return all;
}

test("whatever stands in a session is read or refused, and what was read can be worked out", () => {
  const ends = { whole: 0, lost: 0, leftOut: 0 };
  const changes = fc.array(change, { minLength: 1, maxLength: 3 });
  fc.assert(
    fc.property(changes, (all) => {
      const read = readFile(changed(all));
      ends[read.read && read.lost.length === 0 ? "whole" : "lost"]++;
      if (read.read && workedOut(read.log)?.leftOut.length) ends.leftOut++;
    }),
    { numRuns: long ? 300 : 60 },
  );
  expect(Math.min(...Object.values(ends)), JSON.stringify(ends)).toBeGreaterThan(0);
});
