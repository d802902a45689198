import { describe, expect, test } from "vitest";
import { gainsAt } from "#core/measurement/gains-at.ts";
import type { ReturnMeasurement } from "#core/measurement/measured.ts";
import { type Making, making } from "./made.ts";
import { expected, measure } from "./truth.ts";

/** What an entry should read, level in decibels and polarity; nothing carried where it is absent. */
type Expected = readonly (readonly (readonly [number, 1 | -1] | undefined)[])[];

const flat = (gains: readonly (readonly number[])[]): Partial<Making> => ({
  gain: (input, programme) => ({ re: gains[input]?.[programme] ?? 0, im: 0 }),
});

const healthy: Expected = [
  [[0, 1], undefined],
  [undefined, [0, 1]],
];

const shapes: readonly {
  readonly name: string;
  readonly of: Partial<Making>;
  readonly reads: Expected;
}[] = [
  { name: "healthy", of: {}, reads: healthy },
  {
    name: "swapped",
    of: flat([
      [0, 1],
      [1, 0],
    ]),
    reads: [
      [undefined, [0, 1]],
      [[0, 1], undefined],
    ],
  },
  {
    name: "mono in the wire",
    of: flat([
      [0.5, 0.5],
      [0.5, 0.5],
    ]),
    reads: [
      [
        [-6.02, 1],
        [-6.02, 1],
      ],
      [
        [-6.02, 1],
        [-6.02, 1],
      ],
    ],
  },
  {
    name: "left lost",
    of: flat([
      [0, 0],
      [0, 1],
    ]),
    reads: [
      [undefined, undefined],
      [undefined, [0, 1]],
    ],
  },
  {
    name: "right inverted and 6 dB down",
    of: flat([
      [1, 0],
      [0, -0.5],
    ]),
    reads: [
      [[0, 1], undefined],
      [undefined, [-6.02, -1]],
    ],
  },
  {
    name: "return lost",
    of: flat([
      [0.5, -0.5],
      [-0.5, 0.5],
    ]),
    reads: [
      [
        [-6.02, 1],
        [-6.02, -1],
      ],
      [
        [-6.02, -1],
        [-6.02, 1],
      ],
    ],
  },
  {
    name: "crosstalk of −20 dB in antiphase",
    of: flat([
      [1, -0.1],
      [-0.1, 1],
    ]),
    reads: [
      [
        [0, 1],
        [-20, -1],
      ],
      [
        [-20, -1],
        [0, 1],
      ],
    ],
  },
  { name: "one input", of: { inputs: 1 }, reads: [[[0, 1], undefined]] },
];

function expectReading(result: ReturnMeasurement, reads: Expected): void {
  expect(result.entries.length).toBe(reads.length);
  for (const [input, row] of reads.entries())
    for (const [programme, entry] of row.entries()) {
      const own = result.entries[input]?.[programme];
      expect(own?.carried, `${input} ${programme}`).toBe(entry !== undefined);
      if (entry === undefined) continue;
      expect(own?.level).toBeCloseTo(entry[0], 1);
      expect(own?.polarity).toBe(entry[1]);
    }
}

/** Phases and levels at a few frequencies, read between the tones. */
function expectGains(making: Making, result: ReturnMeasurement): void {
  const truth = expected(making, result);
  for (const frequency of [100, 440, 1000, 5000])
    for (const [input, row] of gainsAt(result, frequency).entries())
      for (const [programme, gain] of row.entries()) {
        const right = truth(input, programme, frequency);
        const off = Math.hypot((gain?.re ?? 9) - right.re, (gain?.im ?? 9) - right.im);
        expect(off, `${frequency} Hz, ${input} ${programme}`).toBeLessThan(6 * (gain?.error ?? 0));
      }
}

describe.for(shapes)("$name", ({ of, reads }) => {
  test("is read as it is, 300 ms late, at 40 dB", () => {
    const made = { ...making, drift: 100, ...of };
    const result = measure(made, 40, 11);
    expectReading(result, reads);
    expectGains(made, result);
    expect(result.stretches).toBe("both");
    expect(Math.abs(result.delay.value - 0.3)).toBeLessThan(1e-6);
  });
});

describe.for([
  [16_000, 0],
  [44_100, 200],
  [48_000, -300],
  [96_000, -200],
] as const)("at %d Hz with %d ppm", ([rate, drift]) => {
  test("all is read", () => {
    const made = { ...making, rate, drift, delay: 0.7 };
    const result = measure(made, 40, 3);
    expectReading(result, healthy);
    expectGains(made, result);
    expect(Math.abs(result.drift.value - drift)).toBeLessThan(0.001);
    expect(Math.abs(result.delay.value - 0.7)).toBeLessThan(1e-6);
  });
});

describe("delay", () => {
  test.for([0.012, 0.0025, -0.0007])("one side %d s later is told to 1 µs", (late) => {
    const result = measure({ ...making, drift: 30, late: (input) => input * late }, 40, 5);
    expect(Math.abs((result.between?.value ?? 9) - late)).toBeLessThan(1e-6);
    expect(result.between?.error).toBeLessThan(1e-7);
  });

  test("the difference is told where neither side is flat", () => {
    const gain: Making["gain"] = (input, programme, frequency) => {
      const over = frequency / 400;
      const size = input === programme ? 1 / (1 + over * over) : 0;
      return { re: size, im: -over * size };
    };
    const result = measure({ ...making, gain, late: (input) => input * 0.0003 }, 40, 6);
    expect(Math.abs((result.between?.value ?? 9) - 0.0003)).toBeLessThan(1e-6);
  });
});

describe("a capture of a part", () => {
  test.for([
    { name: "begins after the clicks", delay: -0.8, duration: 9.2, has: "both" },
    { name: "begins in the first stretch", delay: -3, duration: 7.5, has: "second" },
    { name: "is the second stretch alone", delay: -5.2, duration: 4.4, has: "second" },
    { name: "is the first stretch alone", delay: -0.7, duration: 4.5, has: "first" },
    { name: "begins long before and ends long after", delay: 4, duration: 20, has: "both" },
  ] as const)("$name", ({ delay, duration, has }) => {
    for (const ratio of [40, 0]) {
      const result = measure({ ...making, drift: -70, delay, duration }, ratio, 8);
      expect(result.stretches).toBe(has);
      expectReading(result, healthy);
      expect(Math.abs(result.delay.value - delay)).toBeLessThan(ratio === 40 ? 1e-6 : 5e-5);
      const programmes = result.responses[0]?.gains[0]?.filter((gain) => gain !== undefined);
      expect(programmes?.length).toBe(has === "both" ? 2 : 1);
    }
  });
});
