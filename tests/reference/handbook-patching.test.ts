import { describe, expect, test } from "vitest";
import { touching } from "#core/parts/touching.ts";
import { panMoves } from "#core/patching/panning.ts";
import { predictionAt } from "#core/patching/prediction.ts";
import { faultOf } from "./changed-rig.ts";
import { byLead, ends, forked, mains, predicted, rigWith, single } from "./feeds.ts";
import { expectPrinted } from "./printed.ts";
import { silent } from "./stages.ts";

const pair = forked(...mains);
const mixer = (balancing: string, legOhms = 0) => ends("mixer", { balancing, "leg ohms": legOhms });
const active = mixer("actively balanced");
const plain = mixer("impedance-balanced");

/**
 * Handbook, section 4 (C), every row as the advice before plugging in foretells it, from the circuits of a mixer, a lead and an amplifier
 * of 10 kilohms a side. Levels as printed; a star stands for an ear that gets nothing.
 */
describe("from both jacks, and from the headphone socket: stereo", () => {
  const ringsUnused = "insert Y with TRS plugs, rings unused";
  const ringToSleeve = "insert Y with TRS plugs, ring to sleeve";

  test.each([
    ["headphone socket by TRS lead", plain, byLead("TRS lead", single("phones")), "0.0"],
    ["impedance-balanced, insert Y", plain, byLead("insert Y", pair), "-0.13"],
    ["actively balanced, insert Y", active, byLead("insert Y", pair), "-0.09"],
    ["actively balanced, ring unused", active, byLead(ringsUnused, pair), "-0.09"],
    ["cross-coupled, insert Y", mixer("cross-coupled", 50), byLead("insert Y", pair), "5.9"],
    ["cross-coupled, to sleeve", mixer("cross-coupled", 50), byLead(ringToSleeve, pair), "5.9"],
    ["cross-coupled, unused", mixer("cross-coupled", 50), byLead(ringsUnused, pair), "-3.6"],
    ["transformer of 50 a leg", mixer("transformer", 50), byLead(ringToSleeve, pair), "5.9"],
    ["transformer of 600 a leg", mixer("transformer", 600), byLead(ringToSleeve, pair), "5.0"],
  ])("%s", (_, between, patch, printed) => {
    const { level, effect, panning } = predicted(between, patch);
    expectPrinted([...level], `${printed} ${printed}`);
    expect(effect).toBe("straight");
    expect(panning).toEqual({
      left: "left ear",
      middle: "middle",
      right: "right ear",
      wide: "all round",
    });
  });

  test("transformer, ring left open: nothing", () => {
    const { level, effect } = predicted(mixer("transformer"), byLead(ringsUnused, pair));
    expectPrinted([...level], "-38 -38");
    expect(effect).toBe("nothing");
  });

  test("an insert Y with two-contact plugs has the ring on the sleeve at the output end", () => {
    expect(touching("TS", "TRS", "home")).toContainEqual(["ring", "sleeve"]);
  });
});

describe("from one socket", () => {
  const send = byLead("TRS lead", single("send"));
  const [one, other] = ["all in the left ear", "mono, one ear inverted"] as const;

  test.each([
    ["impedance-balanced, TRS lead", plain, send, "-0.1 *", one],
    ["actively balanced, TRS lead", active, send, "-0.1 -0.1", other],
    ["quasi-balanced, TRS lead, earthed", mixer("quasi-balanced"), send, "-0.1 *", one],
    [
      "tip to tip and ring",
      plain,
      byLead("one-to-both lead", single("send")),
      "-0.26 -0.26",
      "mono",
    ],
  ])("mono send, %s: pan does nothing", (_, between, patch, printed, effect) => {
    const told = predicted(between, patch);
    expectPrinted([...told.level], printed);
    if (printed.endsWith("*")) expect(told.level[1]).toBeLessThan(silent);
    expect(told.effect).toBe(effect);
    expect(panMoves(told.panning)).toBe(false);
    expect(told.ties).toEqual(["send knob", "own mix"]);
  });

  test("a quasi-balanced send depends on the ground: floating, inverted in the other ear, and loud hum", () => {
    const floating = ends("mixer", { balancing: "quasi-balanced" }, { supply: "floating" });
    const told = predicted(floating, send);
    expectPrinted([...told.gains], ".49 .49 -.49 -.49");
    expect([told.effect, told.hum]).toEqual([other, "loud"]);
    expect(predicted(mixer("quasi-balanced"), send).hum).toBe("some");
  });

  test.each([
    ["impedance-balanced", "0 .99 0 0", "left ear"],
    ["actively balanced", "0 .99 0 -.99", "all round"],
  ])("the right jack of a pair, %s, by TRS lead: one side only", (balancing, printed, heard) => {
    const told = predicted(mixer(balancing), byLead("TRS lead", single("main right")));
    expectPrinted([...told.gains], printed);
    expect(told.panning).toMatchObject({ left: "nothing", right: heard });
  });

  test("one stereo socket by TS lead: left, and hard on the output", () => {
    const told = predicted(plain, byLead("TS lead", single("phones")));
    expectPrinted([told.level[0]], "0.0");
    expect(told.level[1]).toBeLessThan(silent);
    expect(told.effect).toBe("right gone");
    expect(told.strains.map(({ socket }) => socket)).toEqual(["phones"]);
  });
});

describe("the insert Y in other hands", () => {
  test("one plug out: one ear", () => {
    const out = pair.filter(([plug]) => plug !== "right");
    const { level, effect } = predicted(plain, byLead("insert Y", out));
    expectPrinted([level[0]], "-0.1");
    expect(level[1]).toBeLessThan(-40);
    expect(effect).toBe("right gone");
  });

  test("sides exchanged: swapped", () => {
    const rig = rigWith(plain, byLead("insert Y", pair));
    const fault = faultOf(rig, "lead / plugs / sides exchanged");
    const { effect, panning } = predictionAt(rig, "amplifier", [fault]);
    expect([effect, panning.left, panning.right]).toEqual(["swapped", "right ear", "left ear"]);
  });
});

// Handbook, section 4: 'the cold amplifier is shorted to ground'; 'better with TRS plugs, ring unused'. Nothing else in the table strains.
test.each([
  ["insert Y", "actively balanced", ["main left", "main right"]],
  ["insert Y with TRS plugs, ring to sleeve", "actively balanced", ["main left", "main right"]],
  ["insert Y with TRS plugs, rings unused", "actively balanced", []],
  ["insert Y", "impedance-balanced", []],
  ["insert Y", "cross-coupled", []],
  ["insert Y", "transformer", []],
  ["insert Y", "quasi-balanced", []],
] as const)("%s on %s outputs strains %j", (kind, balancing, sockets) => {
  const { strains } = predicted(mixer(balancing), byLead(kind, pair));
  expect(strains.map(({ socket }) => socket)).toEqual(sockets);
  expect(strains.every(({ part, ohms }) => part === "source" && ohms < 1)).toBe(true);
});

// Handbook, section 4, 'to weigh' (common practice, no source).
test.each([
  ["TRS lead", single("phones"), ["headphone knob", "solo takes it over", "hiss past half"]],
  ["insert Y", forked("monitor left", "monitor right"), ["monitor knob", "solo takes it over"]],
  ["insert Y", pair, ["main fader"]],
  ["one-to-both lead", single("send"), ["send knob", "own mix"]],
] as const)("%s: what its level hangs on", (kind, plugs, ties) => {
  expect(predicted(plain, byLead(kind, plugs)).ties).toEqual(ties);
});
