import { describe, expect, test } from "vitest";
import type { FlexFault, FlexReturn } from "#core/measurement/flex-names.ts";
import { seeded } from "#core/units/random.ts";
import type { Decibels, Seconds } from "#core/units/units.ts";
import { seen } from "./flex-found.ts";
import { gainsOf, leadFault } from "./flex-leads.ts";
import type { Fault } from "./flex-streams.ts";

const lengths: readonly Seconds[] = [0.002, 0.003, 0.005, 0.02, 0.2];
const within: Seconds = 0.001;

/** What the lead's own faults are to be called; a lost sleeve shows with the load box alone (handbook, section 7). */
const named: readonly (readonly [FlexReturn, string, FlexFault])[] = [
  ["joined", "tip open", "tip"],
  ["joined", "ring open", "ring"],
  ["joined", "tip and ring shorted", "tip to ring"],
  ["joined", "tip and sleeve shorted", "tip"],
  ["joined", "ring and sleeve shorted", "ring"],
  ["load box", "tip open", "tip"],
  ["load box", "ring open", "ring"],
  ["load box", "sleeve open", "sleeve"],
  ["load box", "tip and ring shorted", "tip to ring"],
  ["load box", "tip and sleeve shorted", "tip"],
  ["load box", "ring and sleeve shorted", "ring"],
];

/** One of each length, a third of a second apart or more, at times that fall on no grid. */
function faultsOf(returns: FlexReturn, name: string, seed: number): readonly Fault[] {
  const random = seeded(seed);
  const gains = gainsOf(returns, leadFault(name));
  return lengths.map((lasts, at) => ({
    at: 1.3 + 0.4 * at + 0.1 * random(),
    lasts,
    gains,
    ...(random() < 0.5 ? { edge: 0.0003 } : {}),
  }));
}

const conditions: readonly (readonly [rate: number, ppm: number, snr: Decibels])[] = [
  [44_100, 200, 30],
  [48_000, -200, 30],
  [96_000, 137, 30],
  [44_100, -200, 50],
  [48_000, 200, 80],
];

describe.each(named)("%s: %s", (returns, name, fault) => {
  test.each(conditions)(
    "at %i Hz, %i ppm, %i dB: every break, when, how long, what",
    (rate, ppm, snr) => {
      const seed = rate + ppm + snr + name.length;
      const faults = faultsOf(returns, name, seed);
      const stream = { rate, seconds: 3.6, healthy: gainsOf(returns), faults, ppm, snr, seed };
      const { events, disturbed } = seen({ ...stream, delay: 0.2345 }, returns);
      expect(events.map((one) => one.fault)).toEqual(faults.map(() => fault));
      expect(disturbed.count).toBe(0);
      for (const [at, event] of events.entries()) {
        const planted = faults[at] as Fault;
        expect(Math.abs(event.at - planted.at)).toBeLessThan(within);
        expect(Math.abs(event.duration - planted.lasts)).toBeLessThan(within);
        expect(event).toMatchObject({ breaks: 1, going: false });
        const cause = name.endsWith("shorted") ? "short" : "open";
        expect([cause, "open or short"]).toContain(event.cause);
      }
    },
  );
});

test.each([
  ["joined", "tip open", "open"],
  ["load box", "tip open", "open"],
  ["load box", "tip and sleeve shorted", "short"],
  ["load box", "ring and sleeve shorted", "short"],
  // Nothing tells it from an open one there, but for what an open one picks up from its neighbour.
  ["joined", "tip and sleeve shorted", "open or short"],
] as const)("%s: %s for 200 ms at 40 dB is %s", (returns, name, cause) => {
  const faults = [{ at: 1.5, lasts: 0.2, gains: gainsOf(returns, leadFault(name)) }];
  const stream = { rate: 48_000, seconds: 2, healthy: gainsOf(returns), faults, snr: 40 };
  expect(seen(stream, returns).events.map((one) => one.cause)).toEqual([cause]);
});

test("joined grounds: a lost sleeve does not show, and the watch says so", () => {
  const faults = [{ at: 1.5, lasts: 0.5, gains: gainsOf("joined", leadFault("sleeve open")) }];
  const stream = { rate: 48_000, seconds: 2.5, healthy: gainsOf("joined"), faults, snr: 40 };
  const { events, status } = seen(stream, "joined");
  expect(events).toEqual([]);
  expect(status).toEqual({ status: "watching", limits: ["sleeve"] });
});

test("ten seconds are one dropout, and while it lasts it goes on", () => {
  const gains = gainsOf("joined", leadFault("ring open"));
  const stream = { rate: 44_100, healthy: gainsOf("joined"), ppm: 200, snr: 30 };
  const faults = [{ at: 1.5, lasts: 10, gains }];
  const whole = seen({ ...stream, seconds: 12, faults }, "joined").events;
  expect(whole).toHaveLength(1);
  expect(whole[0]).toMatchObject({ kind: "dropout", fault: "ring", breaks: 1, going: false });
  expect(whole[0]?.at).toBeCloseTo(1.5, 3);
  expect(whole[0]?.duration).toBeCloseTo(10, 3);
  const [going] = seen({ ...stream, seconds: 4, faults }, "joined").events;
  expect(going).toMatchObject({ id: 1, fault: "ring", going: true });
  expect(going?.duration).toBeCloseTo(2.47, 1);
});

test("both sides lost at once", () => {
  const gains = gainsOf("joined", [...leadFault("tip open"), ...leadFault("ring open")]);
  const faults = [{ at: 1.5, lasts: 0.03, gains }];
  const stream = { rate: 48_000, seconds: 2, healthy: gainsOf("joined"), faults, snr: 30 };
  expect(seen(stream, "joined").events).toMatchObject([{ kind: "dropout", fault: "tip and ring" }]);
});
