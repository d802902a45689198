import { describe, expect, test } from "vitest";
import { methods } from "#core/proving/choice.ts";
import { provable } from "#core/proving/ends.ts";
import { leadRig } from "#core/proving/lead-rig.ts";
import type { Rig } from "#core/rig/rig.ts";
import { builtInRigs, straightIn } from "#core/rig/rigs.ts";
import { starts } from "#core/rig/starts.ts";
import { isEntry } from "#core/session/reading.ts";
import { starts as words } from "#ui/words/english/starts.ts";

const [rig = straightIn] = builtInRigs;
const isRead = (one: unknown): boolean => isEntry({ id: "1", at: 1, entry: "drawing", rig: one });

/** A rig with one of its parts, plugs or positions otherwise. */
const put = (key: "parts" | "plugged" | "positions", at: number, how: object): object => ({
  ...rig,
  [key]: rig[key].map((one, index) => (index === at ? { ...one, ...how } : one)),
});

describe("a rig is read", () => {
  test("as this program draws it", () => {
    expect([...builtInRigs, straightIn].filter((one) => !isRead(one))).toEqual([]);
    expect(starts.filter(({ make }) => !isRead(make(words))).map(({ key }) => key)).toEqual([]);
  });

  test("as a lead is proved in it, whatever the lead and the way", () => {
    const rigs = provable.flatMap((kind) =>
      methods.flatMap((by): readonly Rig[] => {
        try {
          return [leadRig({ kind, by })];
        } catch {
          return []; // nothing has sockets for that
        }
      }),
    );
    expect(rigs.length).toBeGreaterThan(30);
    expect(rigs.filter((one) => !isRead(one)).map(({ name }) => name)).toEqual([]);
  });

  test("with all that may be left out", () => {
    const [part] = rig.parts;
    const told = { first: "desk", settings: part?.settings ?? {}, controls: {}, good: true };
    expect(isRead(put("parts", 0, { ...told, untried: 20 }))).toBe(true);
    expect(isRead(put("plugged", 0, { sure: true }))).toBe(true);
    expect(isRead(put("positions", 0, { turned: false, wants: "mono" }))).toBe(true);
  });
});

test("two boxes that feed each other are no rig, and it does not look for the end of them", () => {
  const round = (one: string, other: string) => ({
    part: `${one} lead`,
    plug: "near",
    into: one,
    socket: "send",
    to: other,
  });
  const ring: Rig = {
    name: "ring",
    parts: [
      { id: "a", kind: "mixer" },
      { id: "b", kind: "mixer" },
      { id: "a lead", kind: "TRS lead" },
      { id: "b lead", kind: "TRS lead" },
      { id: "headphones 1", kind: "headphones" },
    ],
    plugged: [
      ...[round("a", "b"), round("b", "a")].flatMap(({ to, ...near }) => [
        near,
        { part: near.part, plug: "far", into: to, socket: "1" },
      ]),
      { part: "headphones 1", plug: "plug", into: "a", socket: "phones" },
    ],
    positions: [{ id: "position 1", name: "1", wears: "headphones 1" }],
  };
  expect(isRead(ring)).toBe(false);
});

describe("no rig is read", () => {
  const [first = { id: "" }] = rig.parts;
  test.each([
    ["with one id for two parts", put("parts", 1, { id: first.id })],
    ["with one id for two positions", put("positions", 1, { id: rig.positions[0]?.id })],
    ["with a plug that is not there", put("plugged", 1, { plug: "attic" })],
    ["with a socket that is not there", put("plugged", 1, { socket: "attic" })],
    ["with a kind by a name that every object has", put("parts", 0, { kind: "constructor" })],
    ["with a kind that is no name at all", put("parts", 0, { kind: "__proto__" })],
    ["that wants what nobody can have", put("positions", 0, { wants: "stereo" })],
    ["with controls as text", put("parts", 0, { controls: "up" })],
    ["with a control as text", put("parts", 0, { controls: { level: "up" } })],
    ["with settings as a list", put("parts", 0, { settings: [] })],
    ["with a setting that is nothing", put("parts", 0, { settings: { outputs: null } })],
    ["with a first name that is a number", put("parts", 0, { first: 1 })],
    ["tried less than not at all", put("parts", 0, { untried: -1 })],
    ["good by half", put("parts", 0, { good: 0.5 })],
    ["sure in words", put("plugged", 0, { sure: "yes" })],
    ["turned in words", put("positions", 0, { turned: "yes" })],
    ["worn twice", put("positions", 1, { wears: rig.positions[0]?.wears })],
    ["where nobody listens", { ...rig, positions: [] }],
  ])("%s", (_, one) => {
    expect(isRead(one)).toBe(false);
  });
});
