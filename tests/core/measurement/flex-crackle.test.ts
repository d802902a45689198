import { expect, test } from "vitest";
import { seeded } from "#core/units/random.ts";
import type { Seconds } from "#core/units/units.ts";
import { seen } from "./flex-found.ts";
import { gainsOf, leadFault } from "./flex-leads.ts";
import type { Fault } from "./flex-streams.ts";

const healthy = gainsOf("joined");
const gains = gainsOf("joined", leadFault("tip open"));
const stream = { rate: 48_000, healthy, snr: 30, ppm: -60 };

/** Breaks one after the other: how long each, and how long it holds after it. */
function bounces(at: Seconds, times: readonly (readonly [off: Seconds, on: Seconds])[]) {
  const faults: Fault[] = [];
  let now = at;
  for (const [lasts, on] of times) {
    faults.push({ at: now, lasts, gains });
    now += lasts + on;
  }
  return faults;
}

test.each([1, 2, 3, 4, 5, 6])("makes and breaks are one event with a count, seed %i", (seed) => {
  const random = seeded(seed);
  const times = Array.from(
    { length: 3 + Math.floor(20 * random()) },
    () => [0.002 + 0.006 * random(), 0.002 + 0.03 * random()] as const,
  );
  const faults = bounces(1.3, times);
  const { events } = seen({ ...stream, seconds: 2.6, faults, seed }, "joined");
  const [last = { at: 0, lasts: 0 }] = faults.slice(-1);
  expect(events).toHaveLength(1);
  expect(events[0]).toMatchObject({ kind: "crackle", fault: "tip", breaks: times.length });
  const [{ at, duration, broken }] = events as [(typeof events)[number]];
  expect(at).toBeCloseTo(1.3, 3);
  expect(Math.abs(at + duration - last.at - last.lasts)).toBeLessThan(0.001);
  const all = times.reduce((sum, [off]) => sum + off, 0);
  expect(Math.abs(broken - all)).toBeLessThan(0.0003 * times.length);
});

test("breaks of a millisecond are a crackle when there are three or more, and nothing alone", () => {
  const one = bounces(1.3, [[0.001, 0.3]]);
  const many = bounces(
    1.6,
    Array.from({ length: 5 }, () => [0.001, 0.004] as const),
  );
  const { events } = seen({ ...stream, seconds: 2, faults: [...one, ...many] }, "joined");
  expect(events).toHaveLength(1);
  expect(events[0]).toMatchObject({ kind: "crackle", breaks: 5 });
  expect(events[0]?.at).toBeCloseTo(1.6, 3);
});

test("what holds for no longer than 1.3 ms between breaks still parts them", () => {
  const faults = bounces(
    1.3,
    Array.from({ length: 6 }, () => [0.003, 0.0013] as const),
  );
  const { events } = seen({ ...stream, seconds: 1.8, faults }, "joined");
  expect(events).toMatchObject([{ kind: "crackle", breaks: 6 }]);
});

test("60 ms apart they are two", () => {
  const faults = bounces(1.3, [
    [0.005, 0.06],
    [0.005, 0.06],
  ]);
  const { events } = seen({ ...stream, seconds: 1.8, faults }, "joined");
  expect(events.map(({ kind, breaks }) => [kind, breaks])).toEqual([
    ["dropout", 1],
    ["dropout", 1],
  ]);
});

test("a break without end after others goes on, and counts with them", () => {
  const faults = bounces(1.3, [
    [0.003, 0.01],
    [0.003, 0.01],
    [9, 0],
  ]);
  const { events } = seen({ ...stream, seconds: 2, faults }, "joined");
  expect(events).toMatchObject([{ kind: "crackle", breaks: 3, going: true }]);
});
