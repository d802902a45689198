import { describe, expect, test } from "vitest";
import { sigmas } from "#core/measurement/flex-noise.ts";
import { FlexWindow } from "#core/measurement/flex-window.ts";
import { renderedLevel } from "#core/signals/caps.ts";
import { fromDecibels } from "#core/units/decibels.ts";
import { seeded } from "#core/units/random.ts";
import { seen } from "./flex-found.ts";
import { gainsOf, leadFault } from "./flex-leads.ts";
import { humOf, speechOf } from "./flex-rooms.ts";
import { normals } from "./flex-streams.ts";

const healthy = gainsOf("joined");
const rate = 48_000;
const quiet = { rate, seconds: 20, healthy };
const none = { re: 0, im: 0 };
const nothing = { count: 0, seconds: 0 };

test.each([10, 15, 20, 40, 80])("noise %i dB below, and nothing else: no event", (snr) => {
  const { events, disturbed, blind } = seen({ ...quiet, snr, ppm: 200, seed: snr }, "load box");
  expect({ events, disturbed, blind }).toEqual({ events: [], disturbed: nothing, blind: {} });
});

test("what noise adds to a tone is normal: seven standard deviations are reached by chance less than once in a thousand hours", () => {
  const window = new FlexWindow(rate);
  const normal = normals(seeded(5));
  const noise = Float32Array.from({ length: 96 * 60_000 }, () => normal());
  const tones = new Float64Array(8);
  const values: number[] = [];
  for (let at = 96; at + 96 < noise.length; at += 96) {
    window.tones(noise, at, tones, 0);
    values.push(...tones);
  }
  const variance = values.reduce((sum, one) => sum + one * one, 0) / values.length;
  const beyond = (times: number) =>
    values.filter((one) => Math.abs(one) > times * Math.sqrt(variance)).length / values.length;
  // Two-sided, of a normal distribution (tables).
  expect(beyond(1)).toBeCloseTo(0.3173, 2);
  expect(beyond(2)).toBeCloseTo(0.0455, 3);
  expect(beyond(3) / 0.0027).toBeCloseTo(1, 0);
  expect(beyond(4)).toBeLessThan(2e-4);
  expect(sigmas).toBe(7);
  // Each of 7.2 million windows in an hour: two levels that fall (one side of a normal distribution at seven, tables), two ways over (Rayleigh's).
  const inAnHour = 7.2e6 * (2 * 1.28e-12 + 2 * Math.exp(-(sigmas ** 2) / 2));
  expect(1000 * inAnHour).toBeLessThan(1);
});

describe.each([-10, 0, 10, 20])("hum %i dB above the signal", (level) => {
  test("makes no event, and hides none", () => {
    const gains = gainsOf("joined", leadFault("tip open"));
    const faults = [{ at: 1.5, lasts: 0.004, gains }];
    const stream = { ...quiet, seconds: 4, snr: 40, level: -20, faults };
    const beside = humOf(rate, level - 20);
    const { events, disturbed, blind } = seen({ ...stream, beside }, "joined");
    expect(events).toMatchObject([{ fault: "tip", breaks: 1 }]);
    expect(events[0]?.duration).toBeCloseTo(0.004, 3);
    expect({ disturbed, blind }).toEqual({ disturbed: nothing, blind: {} });
  });
});

describe.each(["joined", "load box"] as const)("%s", (returns) => {
  test.each([-20, -10, -4])("speech at %i dB makes no event, and hides none", (level) => {
    const lead = gainsOf(returns);
    const beside = speechOf(rate, 10, level - 20, level + 60);
    const names = ["tip open", "ring open", "tip and ring shorted"];
    const faults = Array.from({ length: 24 }, (_, at) => ({
      at: 1.4 + 0.35 * at,
      lasts: at % 2 === 0 ? 0.02 : 0.004,
      gains: gainsOf(returns, leadFault(names[at % 3] ?? "")),
    }));
    const stream = { rate, seconds: 10, healthy: lead, snr: 50, level: -20, beside };
    expect(seen(stream, returns).events).toEqual([]);
    const { events } = seen({ ...stream, faults }, returns);
    expect(events).toHaveLength(faults.length);
    for (const [at, event] of events.entries()) {
      expect(Math.abs(event.at - (faults[at]?.at ?? 0))).toBeLessThan(0.001);
      expect(Math.abs(event.duration - (faults[at]?.lasts ?? 0))).toBeLessThan(0.001);
    }
  });
});

test.each([20, 10, 0])(
  "bursts of noise from one sample to the next, at %i dB, make no event",
  (snr) => {
    const normal = normals(seeded(snr));
    const size = fromDecibels(renderedLevel - snr);
    const beside = (_: number, time: number) =>
      time > 1.2 && (time * 4) % 1 < 0.4 ? size * normal() : 0;
    const { events } = seen({ ...quiet, seconds: 12, snr: 50, beside }, "load box");
    expect(events).toEqual([]);
  },
);

/** Crosstalk that is neither in phase nor in antiphase, as no fault makes it. */
const turned = healthy.map((row, channel) =>
  row.map((gain, tone) => (tone < 2 === (channel === 0) ? gain : { re: -0.2, im: 0.35 })),
);
const tipLost = turned.map((row) => row.map((gain, tone) => (tone < 2 ? none : gain)));

test("crosstalk that was there from the start, in any phase, is no event, and hides none", () => {
  const faults = [{ at: 2, lasts: 0.01, gains: tipLost }];
  const stream = { ...quiet, seconds: 4, healthy: turned, snr: 40, faults };
  const { events, disturbed } = seen(stream, "load box");
  expect(events).toMatchObject([{ fault: "tip", breaks: 1 }]);
  expect(disturbed).toEqual(nothing);
});

test("what no fault explains and yet stays is told as a disturbance, and after three seconds is how things are", () => {
  const faults = [
    { at: 2, lasts: 4, gains: turned },
    { at: 6, lasts: 0.01, gains: tipLost },
    { at: 6.01, lasts: 9, gains: turned },
  ];
  const { events, disturbed } = seen({ ...quiet, seconds: 7, snr: 40, faults }, "load box");
  expect(events).toMatchObject([{ fault: "tip", breaks: 1 }]);
  expect(disturbed.count).toBe(1);
  expect(disturbed.seconds).toBeCloseTo(3, 1);
});
