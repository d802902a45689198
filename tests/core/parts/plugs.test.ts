import { expect, test } from "vitest";
import { depths } from "#core/parts/plugs.ts";
import { stepsOut, touching } from "#core/parts/touching.ts";

// Handbook, section 2: what each spring touches on the way out of a three-pole socket.
test.each([
  ["home", "tip-tip ring-ring sleeve-sleeve"],
  ["return spring off", "tip-tip ring-ring"],
  ["ring spring on the insulator", "tip-tip sleeve-sleeve"],
  ["both springs on the tip", "tip-tip ring-tip sleeve-sleeve"],
  ["first click", "ring-tip sleeve-sleeve"],
  ["sleeve spring on the ring", "ring-tip sleeve-ring"],
] as const)("a TRS plug, %s: %s", (depth, printed) => {
  expect(
    touching("TRS", "TRS", depth)
      .map((pair) => pair.join("-"))
      .join(" "),
  ).toBe(printed);
});

test("a TS plug at home shorts the ring spring to the sleeve", () => {
  expect(touching("TS", "TRS", "home")).toContainEqual(["ring", "sleeve"]);
});

test("a TS plug touches nothing by a ring, at any depth", () => {
  for (const depth of depths)
    expect(touching("TS", "TRS", depth).map(([, contact]) => contact)).not.toContain("ring");
});

test("only a four-pole socket loses its return first, and home is no step out", () => {
  expect(stepsOut("TRS", "TRS")).not.toContain("return spring off");
  expect(stepsOut("TRS", "four-pole, common on ring 2")).toContain("return spring off");
  for (const plug of ["TS", "TRS"] as const)
    for (const socket of ["TRS", "four-pole, common on ring 2"] as const)
      expect(stepsOut(plug, socket)).not.toContain("home");
});

test("every step out is told from home, and from every other step, by what touches", () => {
  for (const plug of ["TS", "TRS"] as const) {
    const socket = "four-pole, common on ring 2";
    const steps = ["home", ...stepsOut(plug, socket)] as const;
    const seen = steps.map((depth) => JSON.stringify(touching(plug, socket, depth)));
    expect(new Set(seen).size).toBe(steps.length);
  }
});
