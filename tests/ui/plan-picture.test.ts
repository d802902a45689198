import { describe, expect, test } from "vitest";
import type { PartKind } from "#core/parts/catalogue.ts";
import { choicesOf } from "#core/patching/patches.ts";
import { build } from "#core/rig/rig.ts";
import { cableLanes } from "#ui/parts/cable-lanes.ts";
import { tieOf } from "#ui/parts/cable-tie.ts";
import { brief, said } from "#ui/parts/ear-text.ts";
import { spelledOut } from "#ui/parts/pins.ts";
import { sceneOf } from "#ui/parts/scene.ts";
import { wiredInto } from "#ui/parts/wired.ts";
import {
  firstPlan,
  type Plan,
  withFrom,
  withInto,
  withPatch,
  withSetting,
  withStage,
} from "#ui/screens/plan.ts";
import { foresee, rigFor } from "#ui/screens/plan-foresee.ts";
import { leaveBy, leftOut, takeInHand } from "#ui/screens/plan-moves.ts";
import { pinWords } from "#ui/screens/plan-pin-words.ts";
import { words as english } from "#ui/words/english.ts";

/** A small mixer's output by a lead into a headphone amplifier. */
function by(socket: string, lead: PartKind, stage = "impedance-balanced"): Plan {
  const plan = withStage(leaveBy(firstPlan(), socket), stage);
  const patch = choicesOf(plan, socket, "leads").find(
    ({ wires }) => wires.length === 1 && wires[0]?.kind === lead,
  );
  if (patch === undefined) throw new Error(`no ${lead} goes into ${socket}`);
  return withPatch(plan, patch);
}

const lanesOf = (plan: Plan) => {
  const rig = rigFor(plan);
  if (rig === undefined) throw new Error("not plugged through");
  return cableLanes(wiredInto(build(rig), plan.into.id), 1);
};

const carried = (plan: Plan) => {
  const { starts, mouths } = lanesOf(plan);
  return {
    in: starts.map(({ shown, lost }) =>
      lost ? `${brief(english, shown)}, lost` : brief(english, shown),
    ),
    out: mouths.map(({ shown }) => brief(english, shown)),
  };
};

const ears = (plan: Plan) => {
  const foreseen = foresee(plan);
  return sceneOf(plan, foreseen?.rig, foreseen?.prediction).ears.map((ear) => said(english, ear));
};

describe("the lanes of a cable are what its circuit joins", () => {
  test("a stereo socket by a stereo lead: each side on its own contact", () => {
    expect(carried(by("phones", "TRS lead"))).toEqual({
      in: ["left", "right"],
      out: ["left", "right"],
    });
  });

  test("a stereo socket by a mono lead: the right side is lost at the plug", () => {
    expect(carried(by("phones", "TS lead"))).toEqual({
      in: ["left", "right, lost"],
      out: ["left", "nothing"],
    });
  });

  test("a send by a stereo lead: its ring carries nothing, or the tip's signal upside down, by the output stage", () => {
    expect(carried(by("send", "TRS lead")).out).toEqual(["left + right", "nothing"]);
    expect(carried(by("send", "TRS lead", "actively balanced")).out).toEqual([
      "left + right",
      "−(left + right)",
    ]);
  });

  test("tip to tip and ring: one lane goes in and two come out", () => {
    expect(carried(by("send", "one-to-both lead"))).toEqual({
      in: ["left + right"],
      out: ["left + right", "left + right"],
    });
  });

  test("rings that are left alone are no loss", () => {
    const plan = by("main left", "insert Y with TRS plugs, rings unused", "actively balanced");
    expect(carried(plan)).toEqual({ in: ["left", "right"], out: ["left", "right"] });
  });

  test("one plug of a pair left out: its side is gone", () => {
    const plan = by("main left", "insert Y");
    expect(carried(leftOut(plan, { part: "lead", plug: "right" })).out).toEqual([
      "left",
      "nothing",
    ]);
  });

  test("one balanced input takes the ring's away from the tip's", () => {
    const plan = withSetting(firstPlan(), "headphone amplifier", "input", "one balanced jack");
    const [tip, ring] = lanesOf(plan).mouths;
    expect(tip?.mouth.ears.map(({ minus }) => minus)).toEqual([false, false]);
    expect(ring?.mouth.ears.map(({ minus }) => minus)).toEqual([true, true]);
    expect(ears(plan)).toEqual(["left minus right", "left minus right"]);
  });

  test("a jack normalled to the other feeds both ears from one contact", () => {
    const plan = withSetting(firstPlan(), "headphone amplifier", "input", "left and right jacks");
    expect(lanesOf(plan).mouths.map(({ mouth }) => mouth.ears.length)).toEqual([2]);
    expect(ears(plan)).toEqual(["left", "left"]);
  });

  test("a jack that a normal reaches carries both sides while the other is empty", () => {
    const plan = withFrom(firstPlan(), "instrument");
    expect(carried(plan).out).toEqual(["left + right", "nothing"]);
  });

  test("a return that is lost ties the lanes where they arrive; what arrives as it left is not tied", () => {
    const tie = (plan: Plan) => {
      const foreseen = foresee(plan);
      const { ears: heard, effect } = sceneOf(plan, foreseen?.rig, foreseen?.prediction);
      return tieOf(lanesOf(plan).mouths, heard, effect);
    };
    const other = withSetting(
      withInto(withFrom(firstPlan(), "phone"), "headset"),
      "headset",
      "pin order",
      "common on sleeve",
    );
    expect(tie(other)).toBe("difference");
    expect(ears(other)).toEqual(["left minus right", "right minus left"]);
    expect(tie(withSetting(firstPlan(), "headphone amplifier", "input", "one balanced jack"))).toBe(
      undefined,
    );
    expect(tie(by("send", "TRS lead", "actively balanced"))).toBe(undefined);
  });

  test("headphones straight in: each ear at the end of a contact", () => {
    const plan = withInto(firstPlan(), "headphones");
    expect(plan.patch.wires).toEqual([]);
    expect(carried(plan).out).toEqual(["left", "right"]);
  });
});

describe("what is pointed at", () => {
  test("a lead with two plugs takes both of a pair, left in left", () => {
    const plan = leaveBy(by("main left", "insert Y"), "monitor right");
    expect(plan.patch.plugged).toContainEqual({
      part: "lead",
      plug: "left",
      into: "mixer",
      socket: "monitor left",
    });
    expect(ears(plan)).toEqual(["left", "right"]);
  });

  test("a plug in the hand changes places with what stands in its way", () => {
    const plan = takeInHand(by("main left", "insert Y"), { part: "lead", plug: "left" });
    expect(ears(leaveBy(plan, "main right"))).toEqual(["right", "left"]);
  });

  test("a lead that does not go there makes way for the plainest that does", () => {
    const plan = leaveBy(by("main left", "insert Y"), "send");
    expect(plan.patch.wires.map(({ kind }) => kind)).toEqual(["TRS lead"]);
  });

  test("the picture's ears are the prediction's", () => {
    expect(ears(by("send", "TRS lead", "actively balanced"))).toEqual([
      "left and right",
      "left and right, upside down",
    ]);
  });
});

test("a lead is spelled out pin by pin, read from its circuit", () => {
  const words = (plan: Plan) =>
    spelledOut(plan, plan.patch).flatMap((one) => pinWords(english, one));
  expect(words(by("send", "one-to-both lead"))).toEqual([
    "mono plug (TS): tip to tip and ring; sleeve to sleeve.",
  ]);
  expect(words(by("main left", "insert Y with TRS plugs, ring to sleeve"))).toEqual([
    "stereo plug (TRS), left: tip to tip; ring to sleeve; sleeve to sleeve.",
    "stereo plug (TRS), right: tip to ring; ring to sleeve; sleeve to sleeve.",
  ]);
});
