import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { long } from "#tests/support/long.ts";
import { type Served, serveBuilt } from "#tests/support/served.ts";
import { type Counts, lives, takesBack } from "./lives.ts";
import { seen } from "./what-is-left.ts";

let served: Served;
beforeAll(async () => {
  served = await serveBuilt(4510);
});
afterAll(() => served.close());

/** So many browsers beside each other: much of the time they wait for a sound to end. */
const browsers = 6;
/** What is pressed in one before the first kill. */
const chance = undefined;
const ahead = [
  [],
  [chance, chance, chance],
  // The right is heard on the left, and nothing can be turned round: a look is next.
  [chance, "left ear", "Not possible here"],
  Array.from({ length: 6 }, () => chance),
];
const kills = long ? 2000 : 24;
/** It counts kills, not seconds: a busy machine may take ten times as long; ms. */
const timeout = long ? 3_600_000 : 900_000;

const sum = (all: readonly Counts[], of: (counts: Counts) => number): number =>
  all.reduce((so, one) => so + of(one), 0);

test("killed at every step of a round, nothing is lost and nothing doubled", {
  timeout,
}, async () => {
  const seeds = Array.from({ length: browsers }, (_, at) => 1 + at);
  const all = await Promise.all(
    seeds.map((seed) =>
      lives({
        url: served.url,
        seed,
        kills: kills / browsers,
        ahead: ahead[seed % ahead.length] ?? [],
      }),
    ),
  );
  const [whole, acknowledged, early] = (["whole", "acknowledged", "early"] as const).map((name) =>
    sum(all, (counts) => counts[name]),
  );
  console.log(
    `${kills} kills, ${whole} of the whole browser; ${acknowledged} right after a press was shown, ${early} of the others had been written`,
  );
  expect(all.flatMap(({ wrong }) => wrong)).toEqual([]);
  expect(sum(all, (counts) => counts.kills)).toBe(kills);
  expect(whole).toBeGreaterThan(long ? 100 : 0);
  const places = new Set(all.flatMap((counts) => [...counts.places]));
  // Where a round begins, where it asks, where it has something looked at or done or comes to its end, and where an answer is taken back.
  expect([...places]).toEqual(
    expect.arrayContaining([
      "main > .start",
      "main .ask",
      "main .look .sight",
      "main .do .main, main .verdict .main",
      takesBack,
    ]),
  );
});

describe("what looks at the disk finds", () => {
  const entry = (id: number) => ({
    place: id - 1,
    entry: {
      id: String(id),
      entry: id === 1 ? "drawing" : "finding",
      ...(id === 1 ? {} : { seen: String(id - 1) }),
    },
  });
  const disk = { "1-1": [entry(1), entry(2)] };
  const known = { disk, session: "1-1", entries: 2 };
  const press = { anew: false, place: "main .ask", acknowledged: true };

  test.each([
    ["an entry that is lost", known, press, disk],
    ["one that is there twice", known, press, { "1-1": [entry(1), entry(2), entry(3), entry(3)] }],
    ["one in a wrong place", known, press, { "1-1": [entry(1), entry(2), entry(4)] }],
    ["one that was written over", known, press, { "1-1": [entry(1), entry(3), entry(3)] }],
    ["a session that is lost", known, undefined, {}],
    ["an entry that nobody pressed", known, undefined, { "1-1": [entry(1), entry(2), entry(3)] }],
  ] as const)("%s", (_, before, made, after) => {
    expect(seen(before, made, after).wrong).not.toEqual([]);
  });

  test("nothing where all is well", () => {
    const more = { "1-1": [entry(1), entry(2), entry(3)] };
    expect(seen(known, press, more).wrong).toEqual([]);
    expect(seen(known, { ...press, acknowledged: false }, disk).wrong).toEqual([]);
  });
});
