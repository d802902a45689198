import { describe, expect, test } from "vitest";
import type { Supply } from "#core/parts/boxes.ts";
import { humInto, humRisk } from "#core/patching/hum.ts";
import { earMatrix } from "#core/rig/ear-matrix.ts";
import { isStandIn } from "#core/rig/earths.ts";
import { type BuiltRig, build } from "#core/rig/rig.ts";
import { builtInRigs } from "#core/rig/rigs.ts";
import { stretchInto } from "#core/rig/stretch.ts";
import { add, size } from "#core/units/complex.ts";
import { toDecibels } from "#core/units/decibels.ts";
import { faultOf } from "#tests/reference/changed-rig.ts";
import { inARow } from "#tests/reference/row-rigs.ts";
import { takersOf } from "#tests/reference/simulated.ts";

const row = (first: Supply, middle: Supply, last: Supply): BuiltRig =>
  build(inARow(first, middle, last));

/** What is alike in both sides, at the left ear, decibels. */
function middleLevel(rig: BuiltRig, fault: string): number {
  const [[ll, lr] = []] = earMatrix(rig, "position 1", [faultOf(rig, fault)]);
  if (ll === undefined || lr === undefined) throw new Error("an ear without programme");
  return toDecibels(size(add(ll, lr)));
}

/** Handbook, section 5: a sleeve lost between two earthed boxes is stereo with some hum; into a floating one, a thin middle and loud hum. */
describe("a sleeve lost in the first lead of three boxes in a row", () => {
  const lost = "one / body / sleeve open";

  test("the middle box floats by itself, and stands on earth by the last: stereo, some hum", () => {
    const rig = row("mains-earthed", "floating", "mains-earthed");
    expect(middleLevel(rig, lost)).toBeGreaterThan(-3);
    expect(humRisk(humInto(rig, "box", [faultOf(rig, lost)]))).toBe("some");
  });

  test("nothing else is on earth: the middle is thin, and the hum loud", () => {
    const rig = row("mains-earthed", "floating", "battery");
    expect(middleLevel(rig, lost)).toBeLessThan(-25);
    expect(humRisk(humInto(rig, "box", [faultOf(rig, lost)]))).toBe("loud");
  });

  test("the source has no earth: what the others have does not help it", () => {
    const rig = row("battery", "floating", "mains-earthed");
    expect(middleLevel(rig, lost)).toBeLessThan(-25);
  });
});

test("a box on mains earth stands where it stands: nothing beyond it counts", () => {
  for (const rig of builtInRigs.map(build))
    for (const part of takersOf(rig))
      expect(stretchInto(rig, part, []).circuit.filter(isStandIn)).toEqual([]);
});

test("two boxes stand on what they have: only further ones are stood in for", () => {
  const rig = row("mains-earthed", "floating", "mains-earthed");
  const standIns = (part: string) =>
    stretchInto(rig, part, [])
      .circuit.filter(isStandIn)
      .map(({ name }) => name);
  expect(standIns("middle")).toEqual(["beyond middle: box"]);
  expect(standIns("box")).toEqual(["beyond middle: laptop"]);
  expect(standIns("box's")).toEqual([]);
});
