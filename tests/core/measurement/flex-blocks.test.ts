import { expect, test } from "vitest";
import { FlexWatch } from "#core/measurement/flex-watch.ts";
import { seeded } from "#core/units/random.ts";
import { fed } from "./flex-found.ts";
import { gainsOf, leadFault } from "./flex-leads.ts";
import { streamed } from "./flex-streams.ts";

const healthy = gainsOf("joined");
const gains = gainsOf("joined", leadFault("tip and ring shorted"));
const faults = [0.002, 0.004, 0.1].map((lasts, at) => ({ at: 1.5 + 0.3 * at, lasts, gains }));

test.each([44_100, 48_000, 96_000, 22_050, 192_000])(
  "at %i Hz the same samples in any blocks give the same",
  (rate) => {
    const samples = streamed({ rate, seconds: 2.6, healthy, faults, snr: 30, ppm: 50 });
    const told = [1, 127, 4096, 1e9, seeded(1), seeded(2)].map((blocks) => {
      const watch = fed(new FlexWatch({ rate, channels: 2, returns: "joined" }), samples, blocks);
      return { state: watch.state, live: watch.strip.live(), whole: watch.strip.whole() };
    });
    expect(told[0]?.state.events).toHaveLength(3);
    for (const one of told) expect(one).toEqual(told[0]);
  },
);

test("samples lost on the way, where every phase jumps, are no event, and change nothing after", () => {
  const samples = streamed({ rate: 48_000, seconds: 4, healthy, faults, snr: 40, ppm: 50 });
  const cut = samples.map((channel) => {
    const at = 48_000 * 1.2;
    const kept = new Float32Array(channel.length - 37);
    kept.set(channel.subarray(0, at));
    kept.set(channel.subarray(at + 37), at);
    return kept;
  });
  const watch = new FlexWatch({ rate: 48_000, channels: 2, returns: "joined" });
  const { events } = fed(watch, cut).state;
  expect(events.map(({ fault }) => fault)).toEqual(["tip to ring", "tip to ring", "tip to ring"]);
  expect(events[0]?.at).toBeCloseTo(1.5 - 37 / 48_000, 3);
});

test("what is no number is taken for silence, and heals", () => {
  const samples = streamed({ rate: 48_000, seconds: 2.6, healthy, faults, snr: 40 });
  samples[0]?.fill(Number.NaN, 60_000, 60_010);
  const watch = new FlexWatch({ rate: 48_000, channels: 2, returns: "joined" });
  expect(fed(watch, samples).state.events).toHaveLength(3);
});

test("a rate or channels that cannot be watched are refused, with what can", () => {
  const make = (rate: number, channels: 1 | 2) => () =>
    new FlexWatch({ rate, channels, returns: "joined" });
  expect(make(8000, 2)).toThrow("sampling rate 8000 Hz is not within 16000 to 768000 Hz");
  expect(make(Number.NaN, 2)).toThrow(RangeError);
  expect(make(48_000, 3 as 2)).toThrow("3 channels: one or two");
  const watch = make(48_000, 2)();
  expect(() => watch.push([new Float32Array(4)])).toThrow("a block of 4 samples does not fit");
  expect(() => watch.push([new Float32Array(4), new Float32Array(5)])).toThrow(RangeError);
});
