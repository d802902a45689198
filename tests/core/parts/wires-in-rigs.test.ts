import { describe, expect, test } from "vitest";
import type { PartKind } from "#core/parts/catalogue.ts";
import type { Settings } from "#core/parts/kind.ts";
import { earMatrix } from "#core/rig/ear-matrix.ts";
import { effectOf, signed } from "#core/rig/effect.ts";
import { build, type Connection, type Rig } from "#core/rig/rig.ts";
import { rigFaults } from "#core/rig/rig-faults.ts";
import { size } from "#core/units/complex.ts";
import { expectPrinted, gains } from "#tests/reference/printed.ts";

const position = "position 1";
type Ends = readonly (readonly [part: string, plug: string, into: string, socket: string])[];

/** A rig whose only position wears 'headphones'. */
function rig(
  parts: Readonly<Record<string, PartKind | readonly [PartKind, Settings]>>,
  ends: Ends,
): Rig {
  return {
    name: "wires",
    parts: Object.entries(parts).map(([id, said]) => {
      const [kind, settings] = typeof said === "string" ? [said] : said;
      return { id, kind, ...(settings === undefined ? {} : { settings }) };
    }),
    plugged: ends.map(([part, plug, into, socket]): Connection => ({ part, plug, into, socket })),
    positions: [{ id: position, name: "1 one", wears: "headphones" }],
  };
}

const ears = (one: Rig) => earMatrix(build(one), position, []);
const effect = (one: Rig) => {
  const matrix = ears(one);
  return effectOf(signed(matrix, Math.max(...matrix.flat().map(size))));
};
const small = { size: "3.5 mm" } as const;

/** From a laptop's socket to one set by way of something between, which takes the headphones' plug in a socket of its own. */
const between = (kind: PartKind, settings: Settings, socket: string, headphones: Settings) =>
  rig({ laptop: "laptop", between: [kind, settings], headphones: ["headphones", headphones] }, [
    ["between", "plug", "laptop", "phones"],
    ["headphones", "plug", "between", socket],
  ]);

const patched = (used: Ends = []) =>
  rig(
    {
      laptop: "laptop",
      feed: ["insert Y", { stemSize: "3.5 mm" }],
      mixer: "mixer",
      "lead 1": "TRS lead",
      "lead 2": "TRS lead",
      patchbay: "patchbay",
      "insert lead": "insert Y with TRS plugs, rings unused",
      amplifier: "headphone amplifier",
      headphones: "headphones",
      ...(used.length > 0 ? { patch: "TRS lead" as const } : {}),
    },
    [
      ["feed", "stem", "laptop", "phones"],
      ["feed", "left", "mixer", "1"],
      ["feed", "right", "mixer", "2"],
      ["lead 1", "near", "mixer", "main left"],
      ["lead 2", "near", "mixer", "main right"],
      ["lead 1", "far", "patchbay", "behind above 1"],
      ["lead 2", "far", "patchbay", "behind above 2"],
      ["insert lead", "left", "patchbay", "behind below 1"],
      ["insert lead", "right", "patchbay", "behind below 2"],
      ["insert lead", "stem", "amplifier", "in"],
      ["headphones", "plug", "amplifier", "output 1"],
      ...used,
    ],
  );

const rigs: readonly (readonly [string, Rig, string])[] = [
  ["an extension lead", between("TRS extension lead", small, "socket", small), "straight"],
  [
    "a size adapter",
    between("size adapter", { plugSize: "3.5 mm" }, "socket", { size: "6.35 mm" }),
    "straight",
  ],
  ["a splitter", between("splitter", small, "output 2", small), "straight"],
  [
    "a splitter with resistors",
    between("splitter", { ...small, seriesOhms: 47 }, "output 1", small),
    "straight",
  ],
  ["a headset splitter", between("headset splitter", {}, "headphones", small), "straight"],
  [
    "a volume wheel",
    between("in-line volume wheel", { ...small, up: 0.9 }, "socket", small),
    "straight",
  ],
  ["a mono adapter", between("mono adapter", small, "socket", small), "left in both"],
  ["a stereo-to-mono adapter", between("stereo-to-mono adapter", small, "socket", small), "mono"],
  ["a headset adapter", between("headset adapter", {}, "socket", small), "straight"],
  ["a patchbay's normals", patched(), "straight"],
  [
    "a patch that crosses the pairs",
    patched([
      ["patch", "near", "patchbay", "above 1"],
      ["patch", "far", "patchbay", "below 2"],
    ]),
    "left in both",
  ],
];

describe.each(rigs)("by way of %s", (_, one, printed) => {
  test(`the ears get: ${printed}`, () => {
    expect(effect(one)).toBe(printed);
  });

  test("under every fault of the rig the circuit has an answer", () => {
    const built = build(one);
    const faults = rigFaults(built);
    expect(faults.length).toBeGreaterThan(20);
    for (const fault of faults) {
      const all = earMatrix(built, position, [fault]).flat();
      expect(
        all.every(({ re, im }) => Number.isFinite(re + im)),
        fault.id,
      ).toBe(true);
    }
  });
});

/** A second set of 32 ohms on an output of 10: 1.855 dB, from V = Rload / (Rsource + Rload), and a little less for the wires. */
test("a second set on a splitter takes 1.8 dB from the first, and 47 ohms a side give half of that back", () => {
  const two = (settings: Settings) => {
    const one = between("splitter", { ...small, ...settings }, "output 1", small);
    return {
      one,
      both: {
        ...one,
        parts: [...one.parts, { id: "second", kind: "headphones", settings: small } as const],
        plugged: [
          ...one.plugged,
          { part: "second", plug: "plug", into: "between", socket: "output 2" },
        ],
      },
    };
  };
  const lost = ({ one, both }: ReturnType<typeof two>) => {
    const [before = 0, after = 0] = [one, both].map((each) => gains(ears(each))[0]);
    return 20 * Math.log10(after / before);
  };
  expectPrinted([lost(two({}))], "-1.8", 0.05);
  expect(lost(two({ seriesOhms: 47 }))).toBeGreaterThan(0.55 * -1.8);
});
