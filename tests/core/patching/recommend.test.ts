import { describe, expect, test } from "vitest";
import { catalogue } from "#core/parts/catalogue.ts";
import { fits } from "#core/parts/plugs.ts";
import { rigOf } from "#core/patching/patch.ts";
import { predictionAt } from "#core/patching/prediction.ts";
import { type Recommendation, recommended } from "#core/patching/recommend.ts";
import { stageDecides, stagesOf, whereUnknown } from "#core/patching/stages.ts";
import { gives, wants } from "#core/patching/wants.ts";
import { build, plugOf, socketOf } from "#core/rig/rig.ts";
import { byLead, ends, predicted, single } from "#tests/reference/feeds.ts";

const kindsOf = ({ patch }: Recommendation) => patch.wires.map(({ kind }) => kind).join(" + ");
const mixer = (balancing: string) => ends("mixer", { balancing });

describe("what is wrong, and its cure", () => {
  test("a mono send by a TRS lead: one ear, or hollow; tip to both mends it", () => {
    const wrong = ["impedance-balanced", "actively balanced"].map(
      (by) => predicted(mixer(by), byLead("TRS lead", single("send"))).effect,
    );
    expect(wrong).toEqual(["all in the left ear", "mono, one ear inverted"]);
    const [first] = recommended(mixer("actively balanced"), "mono in both ears", ["send"]);
    expect(first && kindsOf(first)).toBe("one-to-both lead with TRS plug, ring unused");
    expect(first?.prediction.strains).toEqual([]);
  });

  test("a stereo lead from a headphone socket is the simplest stereo", () => {
    const [first] = recommended(mixer("impedance-balanced"), "stereo");
    expect(first && kindsOf(first)).toBe("TRS lead");
    expect(first?.patch.plugged.map(({ socket }) => socket).sort()).toEqual(["in", "phones"]);
  });

  test("a loudspeaker output is never recommended", () => {
    const between = ends("loudspeaker amplifier");
    for (const want of wants) expect(recommended(between, want)).toEqual([]);
  });

  test("where the stage is not known: rings unused; if silent or thin, ring to sleeve", () => {
    const between = mixer("impedance-balanced");
    const pair = ["main left", "main right"];
    const advice = stagesOf(between).map((stage) => ({
      stage,
      best: recommended(mixer(stage), "stereo", pair),
    }));
    expect(stageDecides(advice)).toBe(true);
    const unsure = whereUnknown(advice);
    expect(unsure && kindsOf(unsure.first)).toBe("insert Y with TRS plugs, rings unused");
    // A TS plug in the socket ties the ring to the sleeve, as handbook, section 4, has it.
    expect(unsure?.otherwise && kindsOf(unsure.otherwise)).toMatch(/^insert Y/);
  });
});

const sources = Object.entries(catalogue)
  .filter(
    ([, { family, make }]) =>
      family === "source" && make().sockets.some(({ side }) => side === "out"),
  )
  .map(([kind]) => kind as keyof typeof catalogue);

describe.each(sources)("from a %s", (kind) => {
  test.each(wants)("%s: what is recommended gives it, plugs fit, the cheaper first", (want) => {
    const between = ends(kind);
    const found = recommended(between, want);
    for (const { patch, prediction } of found) {
      const rig = build(rigOf(between, patch, "output 1"));
      expect(gives(predictionAt(rig, "amplifier"), want)).toBe(true);
      expect(prediction.harms).toEqual([]);
      for (const { part, plug, into, socket } of patch.plugged)
        expect(fits(plugOf(rig.part(part), plug), socketOf(rig.part(into), socket))).toBe(true);
    }
    const costs = found.map(({ cost }) => cost);
    expect(costs).toEqual(costs.toSorted((a, b) => a - b));
    if (want === "stereo" && found.length === 0)
      console.log(
        `no stereo from a ${kind} into a stereo jack by a lead or an adapter of the catalogue`,
      );
  });
});
