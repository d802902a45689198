import { describe, expect, test } from "vitest";
import { gainFor } from "#audio/course.ts";
import { buildGraph } from "#audio/graph.ts";
import { ofSignal, Prepared } from "#audio/programme.ts";
import { type Admitted, admit } from "#core/signals/admit.ts";
import { levelCap } from "#core/signals/caps.ts";
import { signalNames } from "#core/signals/catalogue.ts";
import { fromDecibels } from "#core/units/decibels.ts";
import { rendered } from "./offline.ts";

const rates = [44_100, 48_000, 96_000];
const sides = ["left", "right"] as const;
const cap = fromDecibels(-12);
/** Half a step of a 16-bit converter, full scale 1. */
const halfStep = 2 ** -16;
/** As loud as it goes, where an error is greatest. */
const gain = gainFor(levelCap);

/** What arrives at the output when a sound is pushed through the graph. */
const output = (sound: Admitted, gain: number) =>
  rendered(sound.left.length, sound.rate, (context) =>
    buildGraph(context, { sound, gain }).source.start(),
  );

const greatest = (samples: Float32Array) =>
  samples.reduce((most, x) => Math.max(most, Math.abs(x)), 0);

/** The greatest difference between what came out and what went in times the gain. */
const farthest = (out: Float32Array, sound: Float32Array, gain: number) =>
  out.length === sound.length
    ? out.reduce((most, x, n) => Math.max(most, Math.abs(x - gain * (sound[n] ?? 0))), 0)
    : Number.POSITIVE_INFINITY;

describe.for(rates)("at %d Hz", (rate) => {
  test.for(signalNames)("%s leaves as it was rendered, times the gain", async (name) => {
    const programme = ofSignal(name, 1, rate, {}, new Prepared());
    if (programme === "refused") throw new Error(programme);
    const heard = await output(programme.sound, gain);
    for (const side of sides) {
      const sound = programme.sound[side];
      expect(farthest(heard[side], sound, gain)).toBeLessThan(halfStep);
      expect(greatest(heard[side])).toBeLessThanOrEqual(cap);
      // A side that has nothing gets nothing, not even the smallest number.
      expect(greatest(heard[side]) === 0).toBe(greatest(sound) === 0);
    }
  });

  test.for(["left", "right"] as const)(
    "what is on the %s alone is on no other side",
    async (side) => {
      const programme = ofSignal(`${side}-ident`, 1, rate, {}, new Prepared());
      if (programme === "refused") throw new Error(programme);
      const heard = await output(programme.sound, gain);
      expect(greatest(heard[side])).toBeGreaterThan(0.1);
      expect(greatest(heard[side === "left" ? "right" : "left"])).toBe(0);
    },
  );
});

describe("what must not reach an ear", () => {
  const rate = 48_000;
  const square = Float32Array.from({ length: 4800 }, (_, n) => (n % 96 < 48 ? 1 : -1));
  const whole = (x: number) => new Float32Array(4800).fill(x);
  const bad: [what: string, samples: Float32Array, refused: string][] = [
    ["a square at full scale", square, "over the peak cap"],
    ["one at ten times full scale", square.map((x) => 10 * x), "over the peak cap"],
    ["NaN", whole(Number.NaN), "not finite"],
    ["infinity", whole(Number.POSITIVE_INFINITY), "not finite"],
    ["a square of infinity", square.map((x) => x * Number.POSITIVE_INFINITY), "not finite"],
    ["one sample of NaN", square.with(100, Number.NaN), "not finite"],
  ];

  test.for(bad)("%s is refused by gate one", ([, samples, refused]) => {
    const sound = { left: samples, right: samples.slice(), rate };
    expect(admit(sound)).toMatchObject({ refused });
  });

  test.for(bad.slice(0, 2))("%s is capped where it gets past it", async ([, samples]) => {
    const sound = { left: samples, right: samples.slice(), rate } as unknown as Admitted;
    const heard = await output(sound, 1);
    const capped = samples.map((x) => Math.sign(x) * cap);
    for (const side of sides) expect(farthest(heard[side], capped, 1)).toBe(0);
  });
});
