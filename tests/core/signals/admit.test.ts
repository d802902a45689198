import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { admit, type Refusal } from "#core/signals/admit.ts";
import { signalNames } from "#core/signals/catalogue.ts";
import { render } from "#core/signals/render.ts";
import type { Sound } from "#core/signals/sound.ts";
import { fromDecibels } from "#core/units/decibels.ts";

const rate = 48_000;

/** A tone on both channels under raised-cosine ramps; amplitude in full scale, times in seconds. */
function tone({ amplitude = 0.05, offset = 0, ramp = 0.01, length = 0.5 }): Sound {
  const count = length * rate;
  const left = Float32Array.from({ length: count }, (_, n) => {
    const edge = Math.min(1, (n + 0.5) / rate / ramp, (count - n - 0.5) / rate / ramp);
    return (
      (amplitude * Math.sin((2 * Math.PI * 500 * n) / rate) + offset) *
      Math.sin((Math.PI / 2) * edge) ** 2
    );
  });
  return { left, right: left.slice(), rate };
}

function altered(change: (sound: Sound) => void): Sound {
  const sound = tone({});
  change(sound);
  return sound;
}

const refusals: [why: string, sound: Sound, refused: Refusal][] = [
  ["a sample of NaN", altered(({ right }) => right.set([Number.NaN], 900)), "not finite"],
  ["an infinite sample", altered(({ left }) => left.set([-Infinity], 900)), "not finite"],
  ["no samples", { left: new Float32Array(), right: new Float32Array(), rate }, "empty"],
  ["one channel only", { ...tone({}), right: new Float32Array() }, "unequal lengths"],
  ["no rate", { ...tone({}), rate: Number.NaN }, "no rate"],
  ["a rate of zero", { ...tone({}), rate: 0 }, "no rate"],
  ["a peak of -11.9 dBFS", tone({ amplitude: fromDecibels(-11.9) }), "over the peak cap"],
  ["one spike", altered(({ right }) => right.set([-0.3], 9000)), "over the peak cap"],
  [
    "a level of -19.9 dBFS",
    tone({ amplitude: Math.SQRT2 * fromDecibels(-19.9) }),
    "over the level cap",
  ],
  ["an offset of 0.01", tone({ offset: 0.01 }), "offset"],
  [
    "an offset that turns round half way",
    altered(({ left }) => {
      for (const [n, x] of left.entries()) left[n] = x + (n < left.length / 2 ? 0.003 : -0.003);
    }),
    "offset",
  ],
  ["a start without a ramp", altered(({ left }) => left.fill(0, 0, 5000)), "no ramps"],
  ["an end without a ramp", altered(({ right }) => right.fill(0, 20_000)), "no ramps"],
  ["a hole", altered(({ left }) => left.fill(0, 9000, 9600)), "no ramps"],
  ["a ramp of half a millisecond", tone({ ramp: 0.0005 }), "no ramps"],
  ["a click alone", altered(({ left }) => left.fill(0).set([0.1], 9000)), "no ramps"],
];

describe("gate one", () => {
  test.for(refusals)("refuses %s", ([, sound, refused]) => {
    expect(admit(sound)).toMatchObject({ refused });
  });

  test("says what it measured and the bound", () => {
    const verdict = admit(tone({ amplitude: 0.5 }));
    expect(verdict).toEqual({
      refused: "over the peak cap",
      measured: expect.closeTo(-6.02, 1),
      bound: -12,
    });
  });

  test.for(signalNames.flatMap((name) => [8000, 48_000].map((at) => ({ name, at }))))(
    "admits $name at $at Hz as it is",
    ({ name, at }) => {
      const sound = render(name, at, 3);
      expect("refused" in admit(sound)).toBe(false);
    },
  );

  test("admits a tone just inside every bound", () => {
    expect(admit(tone({ amplitude: Math.SQRT2 * fromDecibels(-20.1) }))).not.toHaveProperty(
      "refused",
    );
  });

  test("hands out a copy: what the sound becomes later is not played", () => {
    const sound = tone({});
    const admitted = admit(sound);
    sound.left.fill(1);
    expect(admitted).toEqual(tone({}));
  });
});

describe("whatever comes", () => {
  const extremes = [Number.NaN, Infinity, -Infinity, 1e38, -1, 0.26, 0];
  const sample = fc.oneof(
    {
      weight: 50,
      arbitrary: fc.float({ min: Math.fround(-0.25), max: Math.fround(0.25), noNaN: true }),
    },
    { weight: 1, arbitrary: fc.constantFrom(...extremes) },
  );
  const channel = fc.float32Array({ maxLength: 60 });
  const gentle = fc.array(sample, { maxLength: 60 }).map((samples) => Float32Array.from(samples));
  const anyRate = fc.oneof(fc.double(), fc.constantFrom(8000, 48_000));

  /** Both channels alike at times, or lengths would nearly always differ. */
  const pairs = fc.oneof(
    fc.tuple(channel, channel),
    fc.oneof(channel, gentle).map((samples) => [samples, samples.map((x) => -x)] as const),
  );

  test("nothing not finite, nothing over the cap and no uneven pair is admitted", () => {
    fc.assert(
      fc.property(pairs, anyRate, ([left, right], at) => {
        const verdict = admit({ left, right, rate: at });
        if ("refused" in verdict) return;
        const all = [...verdict.left, ...verdict.right];
        expect(verdict.left.length).toBe(verdict.right.length);
        expect(verdict.left.length).toBeGreaterThan(0);
        expect(all.every(Number.isFinite)).toBe(true);
        expect(Math.max(...all.map(Math.abs))).toBeLessThanOrEqual(fromDecibels(-12));
      }),
      { numRuns: 2000 },
    );
  });

  test("a tone is refused once it is spoilt anywhere, and admitted before", () => {
    const good = tone({});
    expect(admit(good)).toEqual(good);
    const at = fc.nat({ max: good.left.length - 1 });
    fc.assert(
      fc.property(at, fc.constantFrom(Number.NaN, Infinity, -Infinity, 0.26, -1e30), (n, bad) => {
        const spoilt = good.right.slice();
        spoilt[n] = bad;
        expect(admit({ ...good, right: spoilt })).toHaveProperty("refused");
      }),
      { numRuns: 50 },
    );
  });
});
