import { expect, test } from "vitest";
import { earMatrix } from "#core/rig/ear-matrix.ts";
import { effectOf, signed } from "#core/rig/effect.ts";
import { build, type Rig } from "#core/rig/rig.ts";

const rig = (plugs: readonly (readonly [string, string, string])[]): Rig => ({
  name: "a leg in the air",
  parts: [
    { id: "player", kind: "player" },
    { id: "lead", kind: "RCA pair lead" },
    { id: "amplifier", kind: "headphone amplifier", settings: { input: "RCA pair" } },
    { id: "headphones 1", kind: "headphones" },
  ],
  plugged: [
    ...plugs.map(([plug, into, socket]) => ({ part: "lead", plug, into, socket })),
    { part: "headphones 1", plug: "plug", into: "amplifier", socket: "output 1" },
  ],
  positions: [{ id: "position 1", name: "1 you", wears: "headphones 1" }],
});
const inputs = build(rig([]))
  .part("amplifier")
  .sockets.filter(({ side }) => side === "in")
  .map(({ name }) => name);
const [left = "", right = ""] = inputs;

test("a leg that is plugged at neither end hangs in the air, and its side is gone", () => {
  const ears = earMatrix(
    build(
      rig([
        ["near left", "player", "left"],
        ["far left", "amplifier", left],
      ]),
    ),
    "position 1",
    [],
  );
  expect(effectOf(signed(ears, 1))).toBe("right gone");
});

test("what comes by the other side's leg alone is named as that", () => {
  const ears = earMatrix(
    build(
      rig([
        ["near left", "player", "left"],
        ["far left", "amplifier", right],
      ]),
    ),
    "position 1",
    [],
  );
  expect(effectOf(signed(ears, 1))).toBe("left in the right ear");
});
