import { expect, test } from "vitest";
import { type Cup, type CupHeard, type Cups, cupOf, cupsBeside } from "#core/measurement/cup.ts";
import { measureReturn } from "#core/measurement/measured.ts";
import { add, type Complex, multiply } from "#core/units/complex.ts";
import { fromDecibels } from "#core/units/decibels.ts";
import { seeded } from "#core/units/random.ts";
import { making } from "./made.ts";
import { noisy } from "./truth.ts";

/** A cup at a microphone: what it carries of each programme, and where and in what room it is held. */
interface Held {
  readonly left: number;
  readonly right: number;
  readonly seed: number;
  /** Decibels of one programme at full scale over the noise. */
  readonly ratio?: number;
}

/** A driver and a microphone: nothing deep, two resonances at places of their own, and an echo off the hand that is as large as the law of squares lets it be. */
function cupAt(seed: number): (frequency: number) => Complex {
  const random = seeded(seed);
  const peaks = [400 + 800 * random(), 2500 + 3000 * random()].map((at) => ({
    at,
    size: 0.4 + random(),
    width: at * (0.2 + 0.3 * random()),
  }));
  const [echo, late] = [0.15 + 0.15 * random(), 0.0002 + 0.0008 * random()];
  return (f) => {
    const high = over({ re: 0, im: f / 90 }, { re: 1, im: f / 90 });
    const rung = peaks.reduce<Complex>(
      (sum, { at, size, width }) =>
        add(
          sum,
          over(
            { re: 0, im: (size * width * f) / at ** 2 },
            { re: 1 - (f / at) ** 2, im: (width * f) / at ** 2 },
          ),
        ),
      { re: 1, im: 0 },
    );
    const angle = -2 * Math.PI * f * late;
    const bounced = { re: 1 + echo * Math.cos(angle), im: echo * Math.sin(angle) };
    return multiply(multiply(high, rung), bounced);
  };
}

const over = (a: Complex, b: Complex): Complex => {
  const by = b.re ** 2 + b.im ** 2;
  return { re: (a.re * b.re + a.im * b.im) / by, im: (a.im * b.re - a.re * b.im) / by };
};

function held({ left, right, seed, ratio = 30 }: Held): CupHeard {
  const random = seeded(seed + 1000);
  const [cup, away] = [cupAt(seed), 0.00008 * random()];
  const made = {
    ...making,
    inputs: 1,
    delay: 0.2 + 0.4 * random(),
    drift: 80 * (random() - 0.5),
    gain: (_: number, programme: number, frequency: number) => {
      const { re, im } = cup(frequency);
      const size = 0.05 * (programme === 0 ? left : right);
      return { re: size * re, im: size * im };
    },
    late: () => away,
  };
  return measureReturn(noisy(made, ratio + 26, seed));
}

const cup = (one: Held): Cup => {
  const result = cupOf(held(one));
  if ("refused" in result) throw new Error(JSON.stringify(result));
  return result;
};

test("which programme it carries", () => {
  expect(cup({ left: 1, right: 0, seed: 1 }).carries).toBe("left");
  expect(cup({ left: 0, right: -1, seed: 2 }).carries).toBe("right");
  expect(cup({ left: 1, right: fromDecibels(-30), seed: 3 }).carries).toBe("left");
  expect(cup({ left: 1, right: 1, seed: 4 })).toMatchObject({ carries: "both", sign: 1 });
  expect(cup({ left: 0.5, right: -0.5, seed: 5 })).toMatchObject({ carries: "both", sign: -1 });
  expect(cup({ left: 0, right: 0, seed: 6 }).carries).toBe("neither");
});

test("a microphone that gives nothing at all says nothing of a cup", () => {
  const channels = [new Float32Array(500_000)];
  expect(cupOf(measureReturn({ rate: 48_000, channels }))).toMatchObject({ refused: "silent" });
});

test("one microphone on both channels is one microphone", () => {
  const { rate, channels } = noisy(
    { ...making, inputs: 1, gain: (_, programme) => ({ re: programme === 0 ? 0.1 : 0, im: 0 }) },
    40,
    7,
  );
  const [one = new Float32Array()] = channels;
  expect(cupOf(measureReturn({ rate, channels: [one] }))).toMatchObject({ carries: "left" });
});

function beside(left: CupHeard, right: CupHeard): Cups {
  const cups = cupsBeside(left, right);
  if ("refused" in cups) throw new Error(JSON.stringify(cups));
  return cups;
}

const seeds = Array.from({ length: 6 }, (_, at) => at + 10);

test("how loud against the other, to 2 dB in cups that are alike", () => {
  for (const seed of seeds.slice(0, 4)) {
    const [left, right] = [held({ left: 1, right: 0, seed }), held({ left: 0, right: 0.5, seed })];
    expect(beside(left, right).apart).toBeCloseTo(-6.02, 0);
  }
});

test.for([1, -1] as const)("the polarity of two cups that are not alike, %d", (sign) => {
  for (const seed of seeds) {
    const [left, right] = [
      held({ left: 1, right: 0, seed, ratio: -5 }),
      held({ left: 0, right: sign * 0.8, seed: seed + 100, ratio: -5 }),
    ];
    expect(beside(left, right).polarity, `${seed}`).toBe(sign);
  }
});

test("a dead cup has no polarity", () => {
  const [left, right] = [
    held({ left: 1, right: 0, seed: 1 }),
    held({ left: 0, right: 0, seed: 2 }),
  ];
  expect(beside(left, right).polarity).toBeUndefined();
});
