import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Blend, beginBlend, followBlend, only, shareAt, toward } from "#audio/blend.ts";
import { buildGraph } from "#audio/graph.ts";
import { ofAudition } from "#audio/programme.ts";
import type { Audition, Version } from "#core/hearing/audition.ts";
import { fromDecibels } from "#core/units/decibels.ts";
import { rendered } from "./offline.ts";
import { steepest, twoTones } from "./two-tones.ts";

const rate = 48_000;
const tones = twoTones(0.3, rate);

interface Change {
  readonly at: number;
  readonly to: Version;
}

/** What comes out of an audition for so many seconds while it goes from one version to the other. */
function output(
  audition: Audition,
  changes: readonly Change[],
  { loop = false, seconds = 0.3, gain = 1, first = "healthy" as Version } = {},
) {
  const programme = ofAudition(audition, loop);
  if (programme === "refused") throw new Error("refused");
  return rendered(seconds * rate, rate, (context) => {
    const graph = buildGraph(context, { ...programme, gain });
    if (graph.shares === undefined) throw new Error("no shares");
    let blend: Blend = only(first);
    beginBlend(graph.shares, blend, 0);
    for (const { at, to } of changes) {
      blend = toward(blend, to, at);
      followBlend(graph.shares, blend);
    }
    graph.source.start();
  });
}

const versions = fc.constantFrom<Version>("healthy", "faulty");
const changes = fc
  .array(fc.record({ at: fc.double({ min: 0.01, max: 0.28, noNaN: true }), to: versions }))
  .map((all) => all.toSorted((a, b) => a.at - b.at));

const steps = (samples: Float32Array) =>
  samples.subarray(1).map((x, n) => Math.abs(x - (samples[n] ?? 0)));
const most = (samples: Float32Array) => samples.reduce((a, b) => Math.max(a, Math.abs(b)), 0);
const unlike = (one: Float32Array, other: Float32Array) =>
  most(one.map((x, n) => x - (other[n % other.length] ?? Number.NaN)));

describe("a blend", () => {
  test("takes 20 ms from one version to the other", () => {
    const blend = toward(only("healthy"), "faulty", 1);
    const shares = [0.9, 1, 1.005, 1.01, 1.02, 3].map((at) => shareAt(blend, at));
    expect(shares.map((x) => Math.round(x * 1e9) / 1e9)).toEqual([0, 0, 0.25, 0.5, 1, 1]);
  });

  test("turned round half way goes back from where it is", () => {
    const blend = toward(toward(only("healthy"), "faulty", 1), "healthy", 1.01);
    const shares = [1.01, 1.015, 1.02, 3].map((at) => shareAt(blend, at));
    expect(shares.map((x) => Math.round(x * 1e9) / 1e9)).toEqual([0.5, 0.25, 0, 0]);
  });

  test("never jumps, whatever is pressed when", () => {
    fc.assert(
      fc.property(changes, (all) => {
        let blend = only("healthy");
        for (const { at, to } of all) {
          const next = toward(blend, to, at);
          expect(shareAt(next, at)).toBe(shareAt(blend, at));
          expect(shareAt(next, at + 0.02)).toBe(to === "faulty" ? 1 : 0);
          blend = next;
        }
      }),
    );
  });
});

describe("the graph with two versions", () => {
  test.for(["healthy", "faulty"] as const)("begins with %s alone", async (first) => {
    const heard = await output(tones, [], { first });
    expect(unlike(heard.left, tones[first].sound.left)).toBeLessThan(1e-7);
    expect(unlike(heard.right, tones[first].sound.right)).toBeLessThan(1e-7);
  });

  test("turns each ear down as the audition says", async () => {
    const { healthy, faulty } = tones;
    const turned = { healthy: { ...healthy, turned: [0.5, 0.01] as const }, faulty };
    const heard = await output(turned, []);
    expect(
      unlike(
        heard.left,
        healthy.sound.left.map((x) => x / 2),
      ),
    ).toBeLessThan(1e-7);
    expect(
      unlike(
        heard.right,
        healthy.sound.right.map((x) => x / 100),
      ),
    ).toBeLessThan(1e-7);
  });

  test("an ear turned down to nothing is exactly zero", async () => {
    const heard = await output({ ...tones, healthy: { ...tones.healthy, turned: [1, 0] } }, []);
    expect(most(heard.right)).toBe(0);
    expect(most(heard.left)).toBeGreaterThan(0.09);
  });

  test("is on the other version 20 ms later, in step with it", async () => {
    const { left } = await output(tones, [{ at: 0.1, to: "faulty" }]);
    const { healthy, faulty } = tones;
    const upTo = 0.1 * rate - 1;
    expect(unlike(left.subarray(0, upTo), healthy.sound.left)).toBeLessThan(1e-7);
    const after = Math.ceil(0.12 * rate) + 1;
    const rest = faulty.sound.left.subarray(after);
    expect(unlike(left.subarray(after), rest)).toBeLessThan(1e-7);
  });

  test("never steps more than a ramp allows, nor is louder than the louder, whatever is pressed when", async () => {
    const { healthy, faulty } = tones;
    // the larger tone's own steepest, and the most that 20 ms from one to the other add
    const bound = 0.1 * steepest(rate) + (0.1 + 0.05) / (0.02 * rate);
    await fc.assert(
      fc.asyncProperty(changes, async (all) => {
        const { left, right } = await output(tones, all);
        expect(most(steps(left))).toBeLessThan(bound * 1.01);
        expect(most(steps(right))).toBeLessThan(bound * 1.01);
        const over = left.findIndex(
          (x, n) =>
            Math.abs(x) >
            Math.max(Math.abs(healthy.sound.left[n] ?? 0), Math.abs(faulty.sound.left[n] ?? 0)) +
              1e-6,
        );
        expect(over).toBe(-1);
      }),
      { numRuns: 40 },
    );
  });

  test("stays under the cap in every state, however great the gain", async () => {
    const loud = await output(
      tones,
      [
        { at: 0.1, to: "faulty" },
        { at: 0.11, to: "healthy" },
      ],
      {
        gain: 1e6,
      },
    );
    expect(most(loud.left)).toBeLessThanOrEqual(fromDecibels(-12) + 1e-8);
    expect(most(loud.right)).toBeGreaterThan(fromDecibels(-12) - 1e-6);
  });
});

describe("a loop", () => {
  test("goes on from the last sample to the first, to the sample", async () => {
    const { left } = await output(tones, [], { loop: true, seconds: 1 });
    expect(unlike(left, tones.healthy.sound.left)).toBeLessThan(1e-7);
  });

  test("does not click: nothing steps more than the tone, at the joint least of all", async () => {
    const { left } = await output(tones, [{ at: 0.299, to: "faulty" }], { loop: true, seconds: 1 });
    expect(most(steps(left))).toBeLessThan(0.1 * steepest(rate) + 0.15 / (0.02 * rate));
    const joint = 0.6 * rate;
    expect(most(left.subarray(joint - 48, joint + 48))).toBeLessThan(0.001);
  });
});

describe("what is not an audition", () => {
  const { healthy, faulty } = tones;
  const other = twoTones(0.2, rate).faulty;

  test("versions of unequal length or rate are not played", () => {
    expect(ofAudition({ healthy, faulty: other }, false)).toBe("refused");
    expect(ofAudition({ healthy, faulty: twoTones(0.3, 44_100).faulty }, true)).toBe("refused");
  });

  test("nor is a gain that is no number; one over 1 turns nothing up", () => {
    const voices = (gain: number) =>
      ofAudition({ healthy, faulty: { ...faulty, turned: [gain, 1] } }, true);
    expect(voices(Number.NaN)).toBe("refused");
    expect(voices(4)).toMatchObject({ instead: { through: { ll: 1, rr: 0.25 } } });
  });

  test("its length is told, and what of it is played over and over", () => {
    expect(ofAudition(tones, false)).toMatchObject({ lasts: expect.closeTo(0.3, 6) });
    expect(ofAudition(tones, false)).toMatchObject({ loop: undefined, turnedUp: false });
    expect(ofAudition(tones, false, true)).toMatchObject({ turnedUp: true });
    expect(ofAudition(tones, true)).toMatchObject({ loop: { from: 0, to: 0.3 * rate } });
  });
});
