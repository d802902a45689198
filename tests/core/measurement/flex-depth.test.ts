import { describe, expect, test } from "vitest";
import type { FlexEvent } from "#core/measurement/flex-names.ts";
import { toDecibels } from "#core/units/decibels.ts";
import type { Decibels, Ohms, Seconds } from "#core/units/units.ts";
import { seen } from "./flex-found.ts";
import { contactOhms, type Gains, gainsOf } from "./flex-leads.ts";

const healthy = gainsOf("load box");
const gain = (gains: Gains, channel: number, tone: number) => gains[channel]?.[tone]?.re ?? 0;

/** Eight of a length, in a stream with some noise. */
function eight(gains: Gains, lasts: Seconds, snr: Decibels): readonly FlexEvent[] {
  const faults = Array.from({ length: 8 }, (_, at) => ({
    at: 1.2 + 0.1013 * at,
    lasts,
    gains,
    edge: at % 2 === 0 ? 0 : 0.0003,
  }));
  const seconds = 2.2;
  const { events } = seen({ rate: 48_000, seconds, healthy, faults, snr, ppm: 90 }, "load box");
  expect(events).toHaveLength(8);
  return events;
}

/** Ohms in a contact, and at which noise a depth of that many decibels is known to one. */
const contacts: readonly (readonly [Ohms, Decibels])[] = [
  [10, 30],
  [43, 30],
  [150, 30],
  [400, 45],
  [1000, 50],
];

describe.each(contacts)("%i ohms in the tip, noise %i dB below", (ohms, snr) => {
  test.each([0.004, 0.006, 0.02])("for %f s: its depth to 1 dB", (lasts) => {
    const gains = gainsOf("load box", contactOhms("tip", ohms));
    const depth = -toDecibels(gain(gains, 0, 0) / gain(healthy, 0, 0));
    for (const event of eight(gains, lasts, snr)) {
      expect(event).toMatchObject({ fault: "tip", atLeast: false });
      expect(Math.abs(event.depth - depth)).toBeLessThan(1);
    }
  });
});

test.each([10, 30, 100])("%i ohms in the sleeve: by how much the middle falls, to 1 dB", (ohms) => {
  const gains = gainsOf("load box", contactOhms("sleeve", ohms));
  const middle = (of: Gains) => gain(of, 0, 0) + gain(of, 0, 2);
  const depth = -toDecibels(middle(gains) / middle(healthy));
  for (const event of eight(gains, 0.004, 30)) {
    expect(event.fault).toBe("sleeve");
    expect(Math.abs(event.depth - depth)).toBeLessThan(1);
  }
});

test("an open contact is at least as deep as the noise lets one see", () => {
  const [at30, at60] = ([30, 60] as const).map((snr) =>
    eight(gainsOf("load box", contactOhms("tip", 1e9)), 0.02, snr),
  );
  for (const { depth, atLeast } of at30 ?? []) {
    expect(atLeast).toBe(true);
    expect(depth).toBeGreaterThan(35);
  }
  for (const { depth } of at60 ?? []) expect(depth).toBe(60);
});
