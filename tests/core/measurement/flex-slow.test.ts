import { expect, test } from "vitest";
import { FlexWatch } from "#core/measurement/flex-watch.ts";
import { fromDecibels } from "#core/units/decibels.ts";
import { fed, seen } from "./flex-found.ts";
import { contactOhms, gainsOf, leadFault } from "./flex-leads.ts";
import { streamed } from "./flex-streams.ts";

const healthy = gainsOf("load box");
const rate = 44_100;
const stream = { rate, healthy, snr: 40, ppm: 100 };

test("a level that falls by 3 dB over 20 s is no event, and told by the decibel", () => {
  const samples = streamed({ ...stream, seconds: 26 });
  const [left = new Float32Array()] = samples;
  for (const [n, sample] of left.entries())
    left[n] = sample * fromDecibels(-3 * Math.min(1, Math.max(0, (n / rate - 2) / 20)));
  const watch = fed(new FlexWatch({ rate, channels: 2, returns: "load box" }), samples);
  const { events, changes } = watch.state;
  expect(events).toEqual([]);
  expect(changes.map(({ of }) => of)).toEqual(["left", "left"]);
  for (const [at, { level }] of changes.entries())
    expect(Math.abs(level + 1 + at)).toBeLessThan(0.3);
});

test("a step of 2 dB that stays is a change when it has stayed three seconds", () => {
  const gains = gainsOf("load box", contactOhms("ring", 10));
  const faults = [{ at: 2, lasts: 99, gains }];
  const soon = seen({ ...stream, seconds: 3, faults }, "load box");
  expect(soon.events).toMatchObject([{ fault: "ring", going: true }]);
  const after = seen({ ...stream, seconds: 9, faults }, "load box");
  expect(after.events).toEqual([]);
  expect(after.changes).toMatchObject([{ of: "right" }]);
  expect(after.changes[0]?.at).toBeCloseTo(2, 2);
  expect(after.changes[0]?.level).toBeCloseTo(-1.7, 1);
});

test("what breaks after that is measured from there", () => {
  const [low, lower] = [10, 1e9].map((ohms) => gainsOf("load box", contactOhms("ring", ohms)));
  if (low === undefined || lower === undefined) throw new Error("no gains");
  const faults = [
    { at: 2, lasts: 5, gains: low },
    { at: 7, lasts: 0.004, gains: lower },
    { at: 7.004, lasts: 9, gains: low },
  ];
  const { events } = seen({ ...stream, seconds: 9, faults }, "load box");
  expect(events).toMatchObject([{ fault: "ring", breaks: 1, going: false }]);
  expect(events[0]?.duration).toBeCloseTo(0.004, 3);
});

test("a sleeve that gains ohms: crosstalk is told", () => {
  const gains = gainsOf("load box", contactOhms("sleeve", 8));
  const { events, changes } = seen(
    { ...stream, seconds: 9, faults: [{ at: 2, lasts: 99, gains }] },
    "load box",
  );
  expect(events).toEqual([]);
  expect(changes.map(({ of }) => of).toSorted()).toEqual(["crosstalk", "left", "right"]);
});

test("a whole break stays an event however long it lasts", () => {
  const faults = [{ at: 2, lasts: 99, gains: gainsOf("load box", leadFault("tip open")) }];
  const { events, changes } = seen({ ...stream, seconds: 12, faults }, "load box");
  expect(events).toMatchObject([{ fault: "tip", going: true }]);
  expect(changes).toEqual([]);
});
