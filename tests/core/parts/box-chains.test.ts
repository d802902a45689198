import { describe, expect, test } from "vitest";
import type { PartKind } from "#core/parts/catalogue.ts";
import type { Settings } from "#core/parts/kind.ts";
import { behaviourAt, earMatrix } from "#core/rig/ear-matrix.ts";
import { type BuiltRig, build } from "#core/rig/rig.ts";
import { rigFaults } from "#core/rig/rig-faults.ts";
import { size } from "#core/units/complex.ts";

type Part = readonly [id: string, kind: PartKind, settings?: Settings];
type Plugged = readonly [part: string, plug: string, into: string, socket: string];

const position = "position 1";

const rigOf = (parts: readonly Part[], plugged: readonly Plugged[], wears: string): BuiltRig =>
  build({
    name: "chain",
    parts: parts.map(([id, kind, settings = {}]) => ({ id, kind, settings })),
    plugged: plugged.map(([part, plug, into, socket]) => ({ part, plug, into, socket })),
    positions: [{ id: position, name: "1 one", wears }],
  });

const headphones: Part = ["headphones", "headphones"];
const onAmplifier: Plugged = ["headphones", "plug", "amplifier", "output 1"];

/** Rigs of boxes that hand a stereo feed on, each from its programme to the ears. */
const chains: Readonly<Record<string, BuiltRig>> = {
  "a sound interface, its line outputs into an amplifier": rigOf(
    [
      ["interface", "sound interface", { balancing: "cross-coupled" }],
      ["lead", "insert Y"],
      ["amplifier", "headphone amplifier", { supply: "mains-earthed" }],
      headphones,
    ],
    [
      ["lead", "left", "interface", "line left"],
      ["lead", "right", "interface", "line right"],
      ["lead", "stem", "amplifier", "in"],
      onAmplifier,
    ],
    "headphones",
  ),
  "an instrument into the two jacks of an amplifier": rigOf(
    [
      ["keyboard", "instrument"],
      ["left lead", "TS lead"],
      ["right lead", "TS lead"],
      ["amplifier", "headphone amplifier", { input: "left and right jacks" }],
      headphones,
    ],
    [
      ["left lead", "near", "keyboard", "left/mono"],
      ["right lead", "near", "keyboard", "right"],
      ["left lead", "far", "amplifier", "in left"],
      ["right lead", "far", "amplifier", "in right"],
      onAmplifier,
    ],
    "headphones",
  ),
  "an interface through a widener": rigOf(
    [
      ["interface", "sound interface"],
      ["lead 1", "TRS lead"],
      ["lead 2", "TRS lead"],
      ["widener", "processor"],
      ["lead 3", "TRS lead"],
      ["lead 4", "TRS lead"],
      ["amplifier", "headphone amplifier", { input: "balanced left and right jacks" }],
      headphones,
    ],
    [
      ["lead 1", "near", "interface", "line left"],
      ["lead 1", "far", "widener", "in left"],
      ["lead 2", "near", "interface", "line right"],
      ["lead 2", "far", "widener", "in right"],
      ["lead 3", "near", "widener", "out left"],
      ["lead 3", "far", "amplifier", "in left"],
      ["lead 4", "near", "widener", "out right"],
      ["lead 4", "far", "amplifier", "in right"],
      onAmplifier,
    ],
    "headphones",
  ),
  "an interface by radio to a belt pack": rigOf(
    [
      ["interface", "sound interface"],
      ["lead 1", "TRS lead"],
      ["lead 2", "TRS lead"],
      ["transmitter", "transmitter"],
      ["pack", "belt pack", { size: "6.35 mm" }],
      headphones,
    ],
    [
      ["lead 1", "near", "interface", "line left"],
      ["lead 1", "far", "transmitter", "in left"],
      ["lead 2", "near", "interface", "line right"],
      ["lead 2", "far", "transmitter", "in right"],
      ["pack", "link", "transmitter", "link 1"],
      ["headphones", "plug", "pack", "phones"],
    ],
    "headphones",
  ),
  "a phone and a wireless headset": rigOf(
    [
      ["phone", "phone"],
      ["headset", "wireless headset"],
    ],
    [["headset", "link", "phone", "wireless"]],
    "headset",
  ),
  "an interface by a digital link to a personal mixer": rigOf(
    [
      ["interface", "sound interface"],
      ["lead", "insert Y"],
      ["sender", "link sender", { input: "stereo jack" }],
      ["own mixer", "personal mixer"],
      headphones,
    ],
    [
      ["lead", "left", "interface", "line left"],
      ["lead", "right", "interface", "line right"],
      ["lead", "stem", "sender", "in"],
      ["own mixer", "link", "sender", "link 1"],
      ["headphones", "plug", "own mixer", "phones"],
    ],
    "headphones",
  ),
};

const sizes = (rig: BuiltRig) => earMatrix(rig, position, []).flat().map(size);

describe.each(Object.entries(chains))("%s", (_, rig) => {
  test("stereo, while all is as it should be", () => {
    const [ll = 0, lr = 0, rl = 0, rr = 0] = sizes(rig);
    expect(ll).toBeGreaterThan(0.5);
    expect(ll).toBeCloseTo(rr, 3);
    expect(Math.max(lr, rl)).toBeLessThan(0.02);
  });

  test("can be solved under every fault it can have", () => {
    for (const fault of rigFaults(rig))
      for (const gain of earMatrix(rig, position, [fault]).flat())
        expect(Number.isFinite(size(gain)), fault.id).toBe(true);
  });
});

test("an instrument with its right plug out feeds both sides from the left jack", () => {
  const rig = chains["an instrument into the two jacks of an amplifier"];
  if (rig === undefined) throw new Error("no such chain");
  const one = build({
    ...rig,
    parts: rig.parts.filter(({ id }) => rig.part(id).family !== "person"),
    plugged: rig.plugged.filter(({ part }) => part !== "right lead"),
  });
  const [ll = 0, lr = 0, rl = 0, rr = 0] = sizes(one);
  for (const gain of [lr, rl, rr]) expect(gain).toBeCloseTo(ll, 1);
  expect(ll).toBeGreaterThan(0.3);
});

test("a delay in a digital link reaches the listener as a delay, not as a gain", () => {
  const rig = chains["an interface by a digital link to a personal mixer"];
  if (rig === undefined) throw new Error("no such chain");
  const late = rigFaults(rig).find(({ name }) => name === "right side 1 ms late");
  if (late === undefined) throw new Error("no such fault");
  expect(behaviourAt(rig, position, [late]).late).toBeCloseTo(0.001, 9);
  expect(behaviourAt(rig, position, []).late).toBe(0);
});
