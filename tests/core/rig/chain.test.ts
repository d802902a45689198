import { expect, test } from "vitest";
import { chainTo } from "#core/rig/chain.ts";
import { build } from "#core/rig/rig.ts";
import { rigFaults } from "#core/rig/rig-faults.ts";
import { builtInRigs } from "#core/rig/rigs.ts";
import { staying } from "#core/rig/staying.ts";

const [hall] = builtInRigs;
if (hall === undefined) throw new Error("no rig is built in");
const rig = build(hall);

test("the way to a position, from the source to the listener, with the sockets it leaves boxes by", () => {
  expect(chainTo(rig, "position 3").map(({ part, socket = "" }) => [part, socket])).toEqual([
    ["laptop", "phones"],
    ["insert lead", ""],
    ["mixer", "phones"],
    ["feed lead", ""],
    ["amplifier", "output 3"],
    ["headphones 3", ""],
    ["position 3: listener", ""],
  ]);
});

test("a position that is not there is refused by its name", () => {
  expect(() => chainTo(rig, "position 9")).toThrow("the rig has no position named position 9");
});

test("setting right cures what a look shows at that place; a good part in its stead cures all", () => {
  for (const fault of rigFaults(rig)) {
    const { place, seen } = fault;
    expect(staying(fault, { move: "set right", place }, rig)).toBe(seen ? 0 : 1);
    expect(staying(fault, { move: "replaced", place }, rig)).toBe(0);
    expect(staying(fault, { move: "replaced", place: "elsewhere" }, rig)).toBe(1);
  }
});
