import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { auditionOf } from "#core/hearing/audition.ts";
import {
  type NotOwn,
  type OwnNote,
  type OwnSound,
  type OwnTrouble,
  ownNotes,
  ownSound,
  ownTroubles,
} from "#core/hearing/own-sound.ts";
import { finish } from "#core/hearing/work.ts";
import { admit } from "#core/signals/admit.ts";
import { levelCap, peakCap, renderedLevel } from "#core/signals/caps.ts";
import { fromDecibels, toDecibels } from "#core/units/decibels.ts";
import { type Random, seeded } from "#core/units/random.ts";
import { channel, flat, noise, peak, rate, rms, sine } from "./sounds.ts";

function taken(own: OwnSound | NotOwn): OwnSound {
  if ("refused" in own) throw new Error(own.refused);
  return own;
}

const tone = sine(440, rate, 0.5);
const hold = (value: number) => new Float32Array(rate).fill(value);

/** Level of the loudest 300 ms, dBFS, looked for every 10 ms. */
function loudest(samples: Float32Array): number {
  const [step, width] = [0.01 * rate, 0.3 * rate];
  const places = Array.from({ length: Math.floor((samples.length - width) / step) + 1 });
  const levels = places.map((_, n) => rms(samples.subarray(step * n, step * n + width)));
  return toDecibels(Math.max(...levels));
}

const refusals: [why: string, channels: Float32Array[], refused: OwnTrouble][] = [
  ["no channel", [], "too short"],
  ["no samples", [new Float32Array()], "too short"],
  ["just under half a second", [tone.subarray(0, 23_999)], "too short"],
  ["one channel of two too short", [tone, tone.subarray(0, 100)], "too short"],
  ["a sample of NaN", [tone, tone.with(7, Number.NaN)], "not finite"],
  ["an infinite sample", [tone.with(40_000, Number.NEGATIVE_INFINITY)], "not finite"],
  ["zeros", [hold(0), hold(0)], "silent"],
  ["an offset and nothing else", [hold(0.3)], "silent"],
  ["a tone of -81 dBFS", [sine(440, rate, fromDecibels(-81))], "silent"],
  ["single samples", [channel(rate, (n) => (n % 4800 === 2400 ? 0.9 : 0))], "only clicks"],
  [
    "clicks on one side",
    [tone, channel(rate, (n) => (n % 9600 < 20 ? 0.9 * (-1) ** n : 0))],
    "only clicks",
  ],
];

describe("refused", () => {
  test.for(refusals)("%s", ([, channels, refused]) => {
    expect(ownSound(channels, rate)).toEqual({ refused });
  });

  test("by every reason there is", () => {
    expect(new Set(refusals.map(([, , refused]) => refused))).toEqual(new Set(ownTroubles));
  });

  test("what is not finite after the first minute is not heard and does not matter", () => {
    const long = sine(440, 61 * rate, 0.5).with(60.5 * rate, Number.NaN);
    expect(taken(ownSound([long], rate)).notes).toEqual(["first minute only"]);
  });

  test("half a second is enough", () => {
    expect(ownSound([tone.subarray(0, 24_000)], rate)).toHaveProperty("sound");
  });
});

describe("taken", () => {
  test("one channel is heard on both sides", () => {
    const { sound, notes } = taken(ownSound([tone], rate));
    expect(sound.left).toEqual(sound.right);
    expect(sound).toMatchObject({ rate });
    expect(notes).toEqual([]);
  });

  test("two channels are left and right", () => {
    const { sound } = taken(ownSound([tone, sine(1000, rate, 0.25)], rate));
    expect(toDecibels(rms(sound.left) / rms(sound.right))).toBeCloseTo(toDecibels(2), 1);
  });

  test("of more than two the first two, and it is said", () => {
    const { sound, notes } = taken(ownSound([tone, hold(0), tone, tone, tone, tone], rate));
    expect(peak(sound.right)).toBe(0);
    expect(notes).toEqual(["first two channels only"] satisfies OwnNote[]);
  });

  test("the first minute, and it is said; a minute is taken whole", () => {
    const long = sine(440, 60 * rate + 1, 0.5);
    const { sound, notes } = taken(ownSound([long, long, long], rate));
    expect(sound.left.length).toBe(60 * rate);
    expect(notes).toEqual(ownNotes);
    expect(taken(ownSound([long.subarray(1)], rate)).notes).toEqual([]);
  });

  test.for([0.001, 0.5, 40])("a tone of amplitude %d is as loud as a test signal", (amplitude) => {
    const { sound } = taken(ownSound([sine(440, rate, amplitude)], rate));
    expect(loudest(sound.left)).toBeCloseTo(renderedLevel, 1);
  });

  test("its loudest part counts, and its louder channel", () => {
    const rising = tone.map((x, n) => (x * n) / rate);
    const { sound } = taken(ownSound([rising, rising.map((x) => x / 10)], rate));
    expect(loudest(sound.left)).toBeCloseTo(renderedLevel, 1);
    expect(loudest(sound.right)).toBeCloseTo(renderedLevel - 20, 1);
  });

  test("peaks keep it lower: raised to the level cap it is still below the peak cap", () => {
    const spiky = tone.map((x, n) => (n % 4800 < 48 ? 2 * x : x / 20));
    const { sound } = taken(ownSound([spiky], rate));
    expect(toDecibels(peak(sound.left)) + levelCap - renderedLevel).toBeCloseTo(peakCap, 1);
    expect(loudest(sound.left)).toBeLessThan(renderedLevel);
  });

  test("an offset is taken away without a thump", () => {
    const { sound } = taken(ownSound([tone.map((x) => x * 0.2 + 0.6)], rate));
    const mean = sound.left.reduce((sum, x) => sum + x, 0) / rate;
    expect(Math.abs(mean)).toBeLessThan(1e-4);
    expect(loudest(sound.left)).toBeCloseTo(renderedLevel, 1);
  });

  test("it begins and ends at nothing, along ramps of 10 ms", () => {
    const { left } = taken(ownSound([sine(440, rate, 0.5, 0.25)], rate)).sound;
    expect([left[0], left.at(-1)].map((x = 1) => Math.abs(x))).toEqual([0, 0]);
    expect(peak(left.subarray(0, 48))).toBeLessThan(0.03 * peak(left));
    expect(peak(left.subarray(480, 1000))).toBeCloseTo(peak(left), 2);
  });

  test("what breaks off and begins again gets ramps there, and is left alone elsewhere", () => {
    const broken = sine(1000, rate, 0.5).map((x, n) => (n > 20_000 && n < 25_000 ? 0 : x));
    const { sound } = taken(ownSound([broken], rate));
    expect(admit(sound)).not.toHaveProperty("refused");
    const whole = taken(ownSound([sine(1000, rate, 0.5)], rate)).sound.left;
    const same = (from: number, to: number) =>
      peak(sound.left.subarray(from, to).map((x, n) => x - (whole[from + n] ?? 0)));
    expect(same(1000, 19_000)).toBeLessThan(1e-4);
    expect(same(26_000, rate - 1000)).toBeLessThan(1e-4);
  });

  test("is a copy: what was given stays as it was", () => {
    const given = tone.slice();
    ownSound([given, given], rate);
    expect(given).toEqual(tone);
  });

  test.for([8000, 22_050, 44_100, 96_000])("at %d Hz too", (at) => {
    const samples = noise(at, 5).left;
    expect(admit(taken(ownSound([samples], at)).sound)).not.toHaveProperty("refused");
  });
});

/** One side of what people bring: notes of any pitch down to 30 Hz, drums, pauses of nothing at all, an offset. */
function anySide(random: Random): Float32Array {
  const samples = new Float32Array(2 * rate).fill(random() < 0.3 ? random() - 0.5 : 0);
  for (let event = 0; event < 12; event += 1) {
    const [from, length] = [Math.floor(random() * 1.5 * rate), (0.05 + random() * 0.4) * rate];
    const [pitch, size, decay] = [30 * 2 ** (random() * 8), random() ** 3, 1 + random() * 5];
    const drum = random() < 0.3;
    for (let n = 0; n < length; n += 1) {
      const wave = drum ? random() - 0.5 : Math.cos((2 * Math.PI * pitch * n) / rate);
      samples[from + n] = (samples[from + n] ?? 0) + size * wave * Math.exp((-decay * n) / length);
    }
  }
  return samples;
}

describe("whatever is given", () => {
  test("what people bring is taken and may be played, however abruptly it begins", () => {
    fc.assert(
      fc.property(fc.nat(), (seed) => {
        const random = seeded(seed);
        const { sound } = taken(ownSound([anySide(random), anySide(random)], rate));
        expect(loudest(sound.left)).toBeLessThan(renderedLevel + 0.01);
        const chains = { healthy: flat(1, 0, 0, 1), faulty: flat(0.5, -0.5, -0.5, 0.5) };
        const audition = finish(auditionOf(sound, chains));
        expect(audition).not.toHaveProperty("refused");
      }),
      // Its offset was once taken for less than gate one takes it for.
      { numRuns: 15, examples: [[1162900335]] },
    );
  });

  test("any numbers at all are refused by name or become a finite sound, never thrown", () => {
    const channels = fc.array(fc.float32Array({ maxLength: 300 }), { maxLength: 4 });
    fc.assert(
      fc.property(channels, fc.double({ min: 1, max: 400, noNaN: true }), (given, at) => {
        const own = ownSound(given, at);
        if ("refused" in own) return;
        expect(own.sound.left.every(Number.isFinite)).toBe(true);
        expect(toDecibels(peak(own.sound.left))).toBeLessThan(peakCap);
      }),
      { numRuns: 500 },
    );
  });
});
