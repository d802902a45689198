import { expect, test } from "vitest";
import { waysForOneMore } from "#core/level/one-more.ts";
import { usualProgramme } from "#core/level/stages.ts";
import type { PartKind } from "#core/parts/catalogue.ts";
import type { Rig } from "#core/rig/rig.ts";
import { example, fromHeadphoneSocket, straightIn } from "#core/rig/rigs.ts";
import { starts } from "#core/rig/starts.ts";
import { rigTroubles } from "#core/rig/troubles.ts";
import { starts as words } from "#ui/words/english/starts.ts";

const asked = { programme: usualProgramme, wanted: 80, called: (kind: PartKind) => kind };
const waysIn = (rig: Rig) => waysForOneMore(rig, rig.positions[0]?.id ?? "", asked);

/** One volt of a source behind so much, into one set of so much, and into two. */
const lost = (source: number, ohms: number) =>
  20 * Math.log10(ohms / 2 / (source + ohms / 2) / (ohms / (source + ohms)));

test.for([
  // Facts, section 5: 10 Ω into 32 Ω loses 1.855 dB with a second set, 100 Ω 4.898 dB, 0.1 Ω 0.027 dB.
  [10, -1.855],
  [100, -4.898],
  [0.1, -0.027],
] as const)("a splitter on %s Ω: the first set has %s dB", ([output, due]) => {
  expect(lost(output, 32)).toBeCloseTo(due, 3);
  const rig: Rig = {
    ...straightIn,
    parts: straightIn.parts.map((part) => ({
      ...part,
      settings:
        part.id === "laptop"
          ? { "output ohms": output }
          : { ...part.settings, ohms: 32, metres: 0.1, gauge: 16 },
    })),
  };
  const split = waysIn(rig).find(({ way }) => way.way === "splitter");
  // The splitter's own contacts and wires besides.
  expect(Math.abs((split?.louder ?? 0) - due)).toBeLessThan(0.2);
  expect(split?.effect).toBe("straight");
});

test("the ways of a rig with a free output: that first; every rig can be, and one listens more", () => {
  const rig = fromHeadphoneSocket("two", ["host", "guest"]);
  const wider: Rig = {
    ...rig,
    parts: rig.parts.map((part) =>
      part.id === "amplifier" ? { ...part, settings: { ...part.settings, outputs: 4 } } : part,
    ),
  };
  const ways = waysIn(wider);
  expect(ways[0]?.way).toEqual({ way: "free output", part: "amplifier", socket: "output 3" });
  expect(ways[0]?.louder).toBeCloseTo(0, 2);
  expect(new Set(ways.map(({ way }) => way.way))).toEqual(
    new Set(["free output", "splitter", "another amplifier"]),
  );
  for (const { rig: then, newcomer } of ways) {
    expect(rigTroubles(then)).toEqual([]);
    expect(then.positions).toHaveLength(wider.positions.length + 1);
    expect(then.positions.some(({ id }) => id === newcomer)).toBe(true);
  }
  // The mono send gives one side only, and is put behind what gives both.
  const send = ways.findIndex(({ way }) => "socket" in way && way.socket === "send");
  const straight = ways.findIndex(
    ({ way, effect }) => way.way === "another amplifier" && effect === "straight",
  );
  expect(straight).toBeGreaterThanOrEqual(0);
  expect(send).toBeGreaterThan(straight);
});

test("without a free output a box with more is one of the ways", () => {
  const ways = waysIn(fromHeadphoneSocket("two", ["host", "guest"]));
  expect(ways.map(({ way }) => way.way)).toContain("more outputs");
});

test("no rig is shown twice, and each can be kept as it is", () => {
  for (const rig of [example, ...starts.map(({ make }) => make(words))]) {
    const ways = waysIn(rig);
    const drawn = ways.map(({ rig: then }) =>
      JSON.stringify(then.plugged.map((end) => JSON.stringify(end)).toSorted()),
    );
    expect(new Set(drawn).size).toBe(drawn.length);
    for (const { rig: then } of ways) expect(structuredClone(then)).toEqual(then);
  }
});
