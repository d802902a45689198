import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  type Arrival,
  type Audition,
  auditionOf,
  comparable,
  versions,
} from "#core/hearing/audition.ts";
import { ownSound } from "#core/hearing/own-sound.ts";
import type { EarsAt } from "#core/hearing/response.ts";
import { finish } from "#core/hearing/work.ts";
import { admit, type Refused } from "#core/signals/admit.ts";
import { levelCap, peakCap, renderedLevel } from "#core/signals/caps.ts";
import { render } from "#core/signals/render.ts";
import type { Sound } from "#core/signals/sound.ts";
import { scale } from "#core/units/complex.ts";
import { fromDecibels, toDecibels } from "#core/units/decibels.ts";
import {
  channel,
  difference,
  each,
  flat,
  highPass,
  later,
  peak,
  rate,
  rms,
  sine,
} from "./sounds.ts";

function made(result: Audition | Refused): Audition {
  if ("refused" in result) throw new Error(`${result.refused}: ${result.measured}`);
  return result;
}

const compared = (programme: Sound, healthy: EarsAt, faulty: EarsAt): Audition =>
  made(finish(auditionOf(programme, { healthy, faulty })));

/** An ear's samples as they leave the gain behind the gate. */
const ear = ({ sound, turned }: Arrival, side: "left" | "right"): Float32Array =>
  sound[side].map((sample) => sample * turned[side === "left" ? 0 : 1]);

/** Level beside the programme's, decibels. */
const beside = (programme: Float32Array, heard: Float32Array) =>
  toDecibels(rms(heard) / rms(programme));

const burst = render("burst-pair", rate, 1);
const leftIdent = render("left-ident", rate, 1);
const stereo = flat(1, 0, 0, 1);

/** What a listener might bring: both sides alike in part, with a deep bass and a pause. */
const music: Sound = (() => {
  const count = 3 * rate;
  const [bass, voice, guitar] = [
    sine(55, count, 0.4),
    sine(440, count, 0.3),
    sine(3000, count, 0.1),
  ];
  const side = (own: number) =>
    channel(count, (n) =>
      n > rate && n < 1.2 * rate ? 0 : (bass[n] ?? 0) + (voice[n] ?? 0) + own * (guitar[n] ?? 0),
    );
  const own = ownSound([side(1), side(-0.3)], rate);
  if ("refused" in own) throw new Error(own.refused);
  return own.sound;
})();

describe("an audition", () => {
  test("of a chain that does nothing is the programme itself, as loud", () => {
    const { healthy, faulty } = compared(burst, stereo, flat(0, 1, 1, 0));
    expect(difference(ear(healthy, "left"), burst.left)).toBeLessThan(1e-6);
    expect(difference(ear(healthy, "right"), burst.right)).toBeLessThan(1e-6);
    expect(difference(ear(faulty, "left"), burst.right)).toBeLessThan(1e-6);
    expect(beside(burst.left, ear(healthy, "left"))).toBeCloseTo(0, 2);
  });

  test.for([0.746, 0.1, 20])(
    "brings a healthy chain of gain %d to the level of a signal",
    (gain) => {
      const { healthy, faulty } = compared(burst, flat(gain, 0, 0, gain), flat(gain / 2, 0, 0, 0));
      expect(beside(burst.left, ear(healthy, "left"))).toBeCloseTo(0, 2);
      expect(beside(burst.left, ear(faulty, "left"))).toBeCloseTo(-toDecibels(2), 2);
      expect(peak(ear(faulty, "right"))).toBe(0);
    },
  );

  test("keeps a faint ear faint and whole: the other programme 42 dB down", () => {
    const healthy = flat(0.746, -0.008, -0.008, 0.746);
    const arrived = compared(leftIdent, healthy, flat(0, 0, -0.008, 0));
    const faint = leftIdent.left.map((x) => (x * -0.008) / 0.746);
    for (const version of versions) {
      expect(difference(ear(arrived[version], "right"), faint)).toBeLessThan(1e-7);
    }
    expect(peak(ear(arrived.faulty, "left"))).toBe(0);
  });

  test("does not make what a healthy chain lets across as loud as what it lets through", () => {
    const rightIdent = render("right-ident", rate, 1);
    const { healthy } = compared(rightIdent, flat(0.746, -0.008, 0, 0), flat(0, 0, 0, 0));
    expect(peak(ear(healthy, "left"))).toBeLessThan(0.02 * peak(rightIdent.right));
  });

  test("where the faulty chain is louder the healthy one is lower: a fault is true to size", () => {
    const { healthy, faulty } = compared(burst, stereo, flat(2, 0, 0, 2));
    expect(beside(burst.left, ear(faulty, "left"))).toBeCloseTo(0, 2);
    expect(beside(burst.left, ear(healthy, "left"))).toBeCloseTo(-toDecibels(2), 2);
  });

  test("of one chain with itself is made once", () => {
    const { healthy, faulty } = compared(burst, stereo, stereo);
    expect(faulty).toBe(healthy);
  });

  test("of silence is silence", () => {
    const { healthy, faulty } = compared(render("silence", rate, 1), stereo, flat(0, 1, 1, 0));
    expect([healthy, faulty].map((it) => peak(ear(it, "left")))).toEqual([0, 0]);
  });

  test("of a chain through which nothing comes is silence", () => {
    const { healthy } = compared(burst, flat(0, 0, 0, 0), stereo);
    expect(peak(healthy.sound.left)).toBe(0);
  });

  test("goes on from 0 to 1 and can be stopped", () => {
    const told = [...auditionOf(burst, { healthy: stereo, faulty: flat(0, 1, 1, 0) })];
    expect(told).toEqual(told.toSorted((a, b) => a - b));
    expect(told.at(-1)).toBe(1);
    expect(told.length).toBeGreaterThan(100);
  });

  test("of chains that make no finite gains is a mistake of ours", () => {
    expect(() => compared(burst, stereo, flat(1, 0, 0, Number.NaN))).toThrow(RangeError);
  });
});

describe("whatever the chains", () => {
  const gain = fc.double({ min: -3, max: 3, noNaN: true });
  const gains = fc.tuple(gain, gain, gain, gain);
  const programmes = { music, burst, leftIdent, rightIdent: render("right-ident", rate, 2) };
  const names = fc.constantFrom(...(Object.keys(programmes) as (keyof typeof programmes)[]));

  test("both are admitted, in step, quiet at their ends, no louder than a signal and true to each other", () => {
    fc.assert(
      fc.property(names, gains, gains, (name, one, other) => {
        const programme = programmes[name];
        const { healthy, faulty } = compared(programme, flat(...one), flat(...other));
        const from = (side: "left" | "right", [ll, lr, rl, rr]: typeof one) =>
          programme.left.map((x, n) => {
            const y = programme.right[n] ?? 0;
            return side === "left" ? ll * x + lr * y : rl * x + rr * y;
          });
        const factors = [healthy, faulty].flatMap((version, at) =>
          (["left", "right"] as const).map((side) => {
            const heard = ear(version, side);
            const meant = from(side, at === 0 ? one : other);
            expect(version.sound[side].length).toBe(programme.left.length);
            expect([heard[0], heard.at(-1)].map((x = 1) => Math.abs(x))).toEqual([0, 0]);
            expect(peak(heard)).toBeLessThanOrEqual(
              fromDecibels(peakCap + renderedLevel - levelCap),
            );
            return peak(heard) === 0 ? undefined : peak(heard) / peak(meant);
          }),
        );
        expect(Math.max(...healthy.turned, ...faulty.turned)).toBeLessThanOrEqual(1);
        const [first = 1, ...rest] = factors.filter((it) => it !== undefined);
        for (const factor of rest) expect(factor / first).toBeCloseTo(1, 3);
      }),
      { numRuns: 40 },
    );
  });

  test("of three bands and late on one side, a sound of one's own is admitted", () => {
    const chain: EarsAt = (at) => [
      [highPass(200)(at), scale(later(0.002)(at), 0.3)],
      [scale(highPass(5000)(at), -0.01), later(0.0007)(at)],
    ];
    const { healthy, faulty } = compared(music, each(highPass(60)), chain);
    for (const { sound } of [healthy, faulty]) expect(admit(sound)).not.toHaveProperty("refused");
  });
});

describe("what is not made from the programme", () => {
  const compare = (faulty: Sound) => finish(comparable(burst, { healthy: burst, faulty }, 1));

  test("a version of another length or rate is a mistake of ours", () => {
    expect(() => compare(leftIdent)).toThrow(RangeError);
    expect(() => compare({ ...burst, rate: 44_100 })).toThrow(RangeError);
  });

  test("samples that are not finite are refused by gate one", () => {
    const faulty = { ...burst, left: burst.left.with(9000, Number.NaN) };
    expect(compare(faulty)).toMatchObject({ refused: "not finite" });
  });

  test("nothing but clicks is refused by gate one", () => {
    const clicks = channel(burst.left.length, (n) => (n % 4800 === 2400 ? 0.01 : 0));
    expect(compare({ ...burst, right: clicks })).toMatchObject({ refused: "no ramps" });
  });
});
