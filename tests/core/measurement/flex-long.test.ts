import { expect, test } from "vitest";
import { FlexEvents } from "#core/measurement/flex-events.ts";
import { soakFlex } from "#tests/bench/soak-flex.ts";

/** The hours are `npm run soak -- flex`. */
test("three minutes: all found, nothing made up, much faster than real time", () => {
  const hour = { rate: 48_000, returns: "load box", snr: 30, ppm: -200, seed: 4 } as const;
  const { planted, found, untrue, speed } = soakFlex(3, hour);
  expect(planted).toBeGreaterThan(10);
  expect({ found, untrue }).toEqual({ found: planted, untrue: 0 });
  // 160 on a quiet machine: here it may be a busy one.
  expect(speed).toBeGreaterThan(10);
});

test("three quiet minutes in noise: no event, and nothing held more", () => {
  const hour = {
    rate: 44_100,
    returns: "load box",
    snr: 20,
    ppm: 200,
    seed: 5,
    quiet: true,
  } as const;
  const { untrue, grown } = soakFlex(3, hour);
  expect(untrue).toBe(0);
  // Less than a byte a window: there are 180,000 in the second half.
  expect(grown).toBeLessThan(100_000);
});

test("of more events than are kept the oldest are summed up", () => {
  const events = new FlexEvents();
  for (let at = 0; at < 620; at += 1) {
    events.add({
      at,
      end: at + 0.01,
      fault: at % 2 === 0 ? "tip" : "ring",
      cause: "open",
      depth: at < 100 ? 20 : 30,
      atLeast: false,
    });
    expect(events.settle(at + 0.02)).toBeUndefined();
    expect(events.settle(at + 0.1)?.id).toBe(at + 1);
  }
  expect(events.past).toHaveLength(500);
  expect(events.past[0]?.at).toBe(120);
  expect(events.earlier).toMatchObject({
    count: 120,
    breaks: 120,
    from: 0,
    to: 119.01,
    deepest: 30,
    faults: { tip: 60, ring: 60 },
  });
  expect(events.earlier?.broken).toBeCloseTo(1.2, 6);
});
