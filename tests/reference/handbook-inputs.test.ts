import { describe, expect, test } from "vitest";
import type { Settings } from "#core/parts/kind.ts";
import { type Ends, type Patch, rigOf, seat } from "#core/patching/patch.ts";
import { predictionAt } from "#core/patching/prediction.ts";
import { recommended } from "#core/patching/recommend.ts";
import { earMatrix } from "#core/rig/ear-matrix.ts";
import { build } from "#core/rig/rig.ts";
import { toDecibels } from "#core/units/decibels.ts";
import { faultOf } from "./changed-rig.ts";
import { byLead, ends, type Plugs, predicted, rigWith, single } from "./feeds.ts";
import { expectPrinted, gains } from "./printed.ts";
import { silent } from "./stages.ts";

const into = (input: string): Settings => ({ input, supply: "mains-earthed" });

// Handbook, section 5: 'a stereo feed into one balanced input takes the difference: whatever is in the middle is gone for everybody'.
test("a stereo feed into one balanced input: the middle is gone, for both ears", () => {
  const between = ends("laptop", { socket: "TRS" }, into("one balanced jack"));
  const lead: Patch = {
    wires: [{ id: "lead", kind: "TRS lead", settings: { nearSize: "3.5 mm" } }],
    plugged: byLead("TRS lead", single("phones")).plugged,
  };
  const told = predicted(between, lead);
  expectPrinted([...told.gains], "1.00 -1.00 1.00 -1.00", 0.003);
  expect(told.effect).toBe("difference");
  expect(told.panning).toMatchObject({ left: "middle", middle: "nothing", right: "middle" });
  expect(recommended(between, "stereo")).toEqual([]);
});

// Handbook, section 2: 'used with one plug only it gives 1 0 1 0: left programme in both ears, right gone'.
describe("a pair of jacks with the left normalled to the right", () => {
  const oneLead = (socket: string): Plugs => [
    ["near", "source", socket],
    ["far", "amplifier", "in left"],
  ];

  test("an amplifier's, with one plug only", () => {
    const between = ends("mixer", {}, into("left and right jacks"));
    const told = predicted(between, byLead("TS lead", oneLead("main left")));
    expectPrinted([...told.gains], "0.97 0 0.97 0");
    expect(told.effect).toBe("left in both");
    expect(told.panning.right).toBe("nothing");
  });

  test("balanced jacks do the same, an XLR pair has no normal", () => {
    const jacks = ends("mixer", {}, into("balanced left and right jacks"));
    expect(predicted(jacks, byLead("TRS lead", oneLead("main left"))).effect).toBe("left in both");
    const pins = ends("console", {}, into("XLR pair"));
    expect(predicted(pins, byLead("XLR lead", oneLead("main left"))).effect).toBe("right gone");
  });

  test("an instrument's left/mono jack sends both sides while the right one is empty", () => {
    const between = ends("instrument", {}, into("left and right jacks"));
    const told = predicted(between, byLead("TS lead", oneLead("left/mono")));
    expect(told.effect).toBe("mono");
  });
});

// Handbook, section 5: 'a balanced mono feed whose sides are then added is silence'.
test("a balanced mono feed, its sides added in an amplifier switched to mono", () => {
  const rig = rigWith(
    ends("mixer", { balancing: "actively balanced" }),
    byLead("TRS lead", single("send")),
  );
  const added = gains(earMatrix(rig, seat, [faultOf(rig, "amplifier / settings / mono")]));
  for (const gain of added) expect(toDecibels(Math.abs(gain))).toBeLessThan(silent);
});

// Handbook, sections 2 and 5: the two pin orders; the other one's return goes through the microphone.
describe("a plug of four contacts", () => {
  const worn = (order: string, socket: string): Ends => ({
    from: { id: "source", kind: "phone", settings: { socket } },
    into: { id: "set", kind: "headset", settings: { "pin order": order } },
  });
  const straight: Patch = {
    wires: [],
    plugged: [{ part: "set", plug: "plug", into: "source", socket: "phones" }],
  };
  const told = (between: Ends) => predictionAt(build(rigOf(between, straight)), "set");

  test.each([
    ["common on ring 2", "four-pole, common on ring 2", "straight"],
    ["common on sleeve", "four-pole, common on ring 2", "difference"],
    ["common on ring 2", "TRS", "difference"],
    ["common on ring 2", "TRS with a deep spring", "straight"],
    ["common on sleeve", "TRS", "straight"],
  ])("%s in a socket that is %s: %s", (order, socket, effect) => {
    expect(told(worn(order, socket)).effect).toBe(effect);
  });

  test("advice for the hollow one: an adapter between the pin orders", () => {
    const [first] = recommended(worn("common on sleeve", "four-pole, common on ring 2"), "stereo");
    expect(first?.patch.wires.map(({ kind }) => kind)).toEqual(["headset adapter"]);
    expect(first?.prediction.effect).toBe("straight");
  });

  test("a three-contact plug is fine in either four-pole socket", () => {
    for (const socket of ["four-pole, common on ring 2", "four-pole, common on sleeve"]) {
      const between: Ends = {
        from: { id: "source", kind: "phone", settings: { socket } },
        into: { id: "set", kind: "headphones", settings: { size: "3.5 mm" } },
      };
      expect(told(between).effect).toBe("straight");
    }
  });
});
