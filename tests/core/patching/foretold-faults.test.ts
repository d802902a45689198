import { describe, expect, test } from "vitest";
import type { Settings } from "#core/parts/kind.ts";
import { predictionAt } from "#core/patching/prediction.ts";
import { faultOf } from "#tests/reference/changed-rig.ts";
import { byLead, ends, predicted, rigWith, single } from "#tests/reference/feeds.ts";

const feed = (supply: string, amplifier: Settings, settings: Settings = {}) =>
  rigWith(ends("mixer", { supply, ...settings }, amplifier), byLead("TRS lead", single("phones")));

/** Handbook, section 5, 'the same faults on a line cable': the sleeve lost between two boxes, by how they are powered. */
describe("a lost sleeve", () => {
  const lost = (supply: string, amplifier: string) => {
    const rig = feed(supply, { supply: amplifier });
    return predictionAt(rig, "amplifier", [faultOf(rig, "lead / body / sleeve open")]);
  };

  test("both mains-earthed: stereo stays, some hum", () => {
    const { effect, hum } = lost("mains-earthed", "mains-earthed");
    expect([effect, hum]).toEqual(["straight", "some"]);
  });

  test("one floating: the middle thin and faint, sides wide, loud hum", () => {
    const { effect, hum, panning } = lost("mains-earthed", "floating");
    expect([effect, hum]).toEqual(["difference", "loud"]);
    expect(panning.middle).toMatch(/faint|nothing/);
    expect(panning.left).toBe("all round");
  });

  test("both on battery: hollow and quiet", () => {
    const { effect, hum, gains } = lost("battery", "battery");
    expect([effect, hum]).toEqual(["difference", "none"]);
    expect(gains[0]).toBeCloseTo(0.499, 2);
  });
});

test("healthy, a box on a plug-top supply hums in nobody's ears", () => {
  expect(
    predicted(ends("mixer", {}, { supply: "floating" }), byLead("TRS lead", single("phones"))).hum,
  ).toBe("none");
});

// Facts, section 8: a cable's capacitance behind a high source resistance. 100 m of 1 nF a metre on 10 kilohms: −3 dB near 160 Hz.
test("a long lead behind a high resistance is dull, a short one is not", () => {
  const told = (metres: number, faradsPerMetre: number) =>
    predicted(
      ends("player", { "output ohms": 10_000 }, { input: "RCA pair", "input ohms": 47_000 }),
      {
        wires: [{ id: "lead", kind: "RCA pair lead", settings: { metres, faradsPerMetre } }],
        plugged: byLead("RCA pair lead", [
          ["near left", "source", "left"],
          ["near right", "source", "right"],
          ["far left", "amplifier", "in left"],
          ["far right", "amplifier", "in right"],
        ]).plugged,
      },
    ).tone;
  expect([told(100, 1e-9), told(2, 1e-10)]).toEqual(["dull", "even"]);
});

// Handbook, section 5: 'an open conductor is not silent at line level': 34 dB down at 1 kHz, from its neighbour.
test("an open conductor at line level is gone, but not silent", () => {
  const rig = feed("mains-earthed", { supply: "mains-earthed" });
  const told = predictionAt(rig, "amplifier", [faultOf(rig, "lead / body / tip open")]);
  expect(told.effect).toBe("left gone");
  expect(told.level[0]).toBeGreaterThan(-36);
  expect(told.level[0]).toBeLessThan(-32);
});

test("a lead with two contacts on a headphone socket strains it", () => {
  const rig = feed("mains-earthed", { supply: "mains-earthed" });
  const { strains, effect } = predictionAt(rig, "amplifier", [
    faultOf(rig, "lead / body / lead with two contacts"),
  ]);
  expect(effect).toBe("right gone");
  expect(strains).toMatchObject([{ part: "source", socket: "phones" }]);
});
